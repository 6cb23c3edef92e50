#pragma once

#include <string>
#include <vector>

#include "cli/report/sheet/ledger.h"
#include "cli/report/sheet/view.h"

namespace drawwell {

/// How far the section reaches: along the tunnel, and in height. The flue is shown by a stub.
Extent section_extent(const Stove& stove);

/// Heights over the tunnel floor, from where each is seen.
std::vector<LedgerRow> section_heights(const View& view, const Stove& stove);

/// A width along the tunnel [m], and the height its lines come down from.
struct Span {
    std::string name;
    double from = 0, to = 0, height = 0;
};
std::vector<Span> section_widths(const Stove& stove);

}  // namespace drawwell

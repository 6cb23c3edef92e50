#pragma once

#include <string>
#include <vector>

#include "cli/report/read_result.h"
#include "cli/report/web/page_panels.h"
#include "models/stove.h"

namespace drawwell {

/// A burn made ready for the page.
struct PageRun {
    std::string name;  // that tells it from the others
    BurnResult burn;
    Stove stove;
    std::vector<PagePanel> panels;
    std::size_t hottest = 0;  // the instant at which its riser gas is hottest
};

/// Reads its stove anew from the result, and from that the answers on what is fitted.
/// InputError: the stove cannot be read.
PageRun page_run(const BurnResult& burn, const std::string& name);

}  // namespace drawwell

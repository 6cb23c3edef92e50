#pragma once

#include <vector>

#include "cli/report/sheet/section_measures.h"
#include "models/library.h"

namespace drawwell {

/// How far the plan reaches: along the tunnel, and across it.
Extent plan_extent(const Stove& stove);

/// The stove cut level at the tunnel's axis and seen from above, barrel and plate over it in
/// dashes. No text.
void draw_plan(PaperPage& page, const View& view, const Stove& stove, const Library& library);

/// Widths across the tunnel, narrow ones first; `from` and `to` across, `height` the place along.
std::vector<Span> plan_widths(const Stove& stove);

}  // namespace drawwell

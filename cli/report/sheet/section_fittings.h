#pragma once

#include "cli/report/sheet/view.h"

namespace drawwell {

/// What stands on the plate, over and above the stove itself.
void take_fittings(Extent& extent, const Stove& stove);

/// What the stove is fitted with, and its side air: dashed, as it lies behind or in front of the
/// cut.
void draw_section_fittings(PaperPage& page, const View& view, const Stove& stove);

}  // namespace drawwell

#pragma once

#include "cli/report/sheet/view.h"

namespace drawwell {

/// The middle of the gas's way through the section, dashed, with arrows.
void draw_gas_line(PaperPage& page, const View& view, const Stove& stove);

}  // namespace drawwell

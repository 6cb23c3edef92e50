#pragma once

#include "cli/report/sheet/view.h"
#include "models/library.h"

namespace drawwell {

/// The stove cut along the tunnel's axis: materials tinted, the gas's way, what lies behind in
/// dashes. No text.
void draw_section(PaperPage& page, const View& view, const Stove& stove, const Library& library);

}  // namespace drawwell

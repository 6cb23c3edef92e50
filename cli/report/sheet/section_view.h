#pragma once

#include <span>

#include "cli/report/section/fitting_shapes.h"
#include "cli/report/sheet/view.h"
#include "models/library.h"

namespace drawwell {

/// The stove cut along the tunnel's axis: materials tinted, the gas's way, what lies behind in
/// dashes. No text.
void draw_section(PaperPage& page, const View& view, const Stove& stove, const Library& library);

/// Blocks of a cut stove in their tints, without the gas's way and what lies behind.
void draw_blocks(PaperPage& page, const View& view, const Stove& stove, const Library& library);

/// Outlines of what lies before or behind the cut.
void draw_shapes(PaperPage& page, const View& view, std::span<const CutShape> shapes);

}  // namespace drawwell

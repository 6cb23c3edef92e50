#pragma once

#include "cli/report/web/section_drawing.h"
#include "models/stove.h"

namespace drawwell {

/// A stove's section in millimetres, each block of `cut_outline` in pieces, one for each cell of
/// the column that paints it; then what is fitted, and the whole flue.
struct PaintedSection {
    SectionDrawing drawing;
    double stove_right = 0, stove_top = 0, stove_foot = 0;  // without the flue
};

PaintedSection paint_section(const Stove& stove, const Results& results, const Moment& moment);

}  // namespace drawwell

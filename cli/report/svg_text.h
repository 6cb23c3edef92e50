#pragma once

#include <string>
#include <string_view>

#include "cli/report/nice_steps.h"

namespace drawwell {

/// A point in the units of the axes of a chart, or in pixels from its upper left corner.
struct ChartPoint {
    double x = 0, y = 0;
};

enum class Anchor { start, middle, end };

/// Text as XML takes it: tabs and line breaks become blanks, what an eye could not see or XML does
/// not hold is shown as \xNN.
std::string escaped(std::string_view text);

/// Pixels that a line of text takes at most, at `size` pixels; a guess, as fonts differ.
double text_width(std::string_view text, double size);

/// Cut with an ellipsis to `width` pixels.
std::string shortened(std::string_view text, double width, double size);

/// A text with its base line at a point, with a white rim that keeps it legible over lines.
std::string text_svg(ChartPoint at, std::string_view text, std::string_view colour, double size,
                     Anchor anchor);

std::string line_svg(ChartPoint from, ChartPoint to, std::string_view colour, double thickness,
                     std::string_view dashes = {});

/// The number beside a tick.
std::string tick_text(const NiceSteps& steps, int index);

}  // namespace drawwell

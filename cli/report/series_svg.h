#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "cli/report/chart.h"
#include "solver/results.h"

namespace drawwell {

/// A line of a figure over time.
struct ShownSeries {
    std::string label;
    /// One an instant, in the unit shown; what is not finite is left out.
    std::vector<double> values;
    std::string column = {};  // it shows
    std::size_t cell = 0;     // of that column
};

/// Lines of one unit, which a figure holds.
struct ShownPanel {
    std::string title;
    std::string unit;  // as shown; empty: plain numbers
    std::vector<ShownSeries> series;
};

/// How a panel shows a column: each cell a line, of many the first, the last and some between them.
ShownPanel panel_of(const Results& results, const Column& column);
/// The same of those cells alone.
ShownPanel panel_of(const Results& results, const Column& column, std::vector<std::size_t> cells);

/// Figures over the time after lighting, one below the other, each of columns of one unit in the
/// order in which the units first come. InputError: more lines of a unit than a figure holds.
std::string series_svg(const Results& results, std::string_view title);

/// A line over minutes after lighting; without a label it is not explained.
struct FigureLine {
    std::string label;
    std::vector<ChartPoint> points;
    ChartStyle style;
    bool dots = false;  // marks in place of the line
};

/// One such figure of any lines.
Chart series_chart(const std::string& title, const std::string& unit,
                   std::span<const FigureLine> lines);

/// The colour of the n-th line of a figure, and whether it is dashed: told apart by all eyes.
std::string_view line_colour(std::size_t n);
bool line_dashed(std::size_t n);

}  // namespace drawwell

#include "cli/report/series_svg.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>

#include "cli/read/units.h"
#include "cli/report/cell_labels.h"
#include "cli/report/chart.h"
#include "cli/report/reach.h"
#include "cli/report/shown_unit.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr std::size_t most_cells = 6;  // of a column, that a figure still tells apart; our choice
constexpr std::size_t most_lines = 9;  // whose names fit over a figure

/// Even steps from the first to the last of `count`.
std::vector<std::size_t> some_of(std::size_t count) {
    std::vector<std::size_t> some;
    const std::size_t shown = std::min(count, most_cells);
    for (std::size_t i = 0; i < shown; ++i)
        some.push_back(shown == 1 ? 0 : (i * (count - 1) + (shown - 1) / 2) / (shown - 1));
    return some;
}

Chart chart_of(const std::vector<double>& time, const ShownPanel& panel) {
    std::vector<FigureLine> lines;
    for (std::size_t n = 0; n < panel.series.size(); ++n) {
        FigureLine line{panel.series[n].label, {}, {line_colour(n), line_dashed(n)}};
        for (std::size_t i = 0; i < time.size(); ++i)
            line.points.push_back({to_minutes(time[i]), panel.series[n].values[i]});
        lines.push_back(std::move(line));
    }
    return series_chart(panel.title, panel.unit, lines);
}

}  // namespace

std::string_view line_colour(std::size_t n) {
    // Blue, vermilion, green, purple, ochre and black: the hues of Okabe and Ito, darkened for
    // white.
    static constexpr std::array<std::string_view, 6> colours{"#0b63a5", "#b8480a", "#00694a",
                                                             "#8f2d6b", "#7a5c00", "#222222"};
    return colours[n % colours.size()];
}

bool line_dashed(std::size_t n) {
    return n / 6 % 2 == 1;
}

ShownPanel panel_of(const Results& results, const Column& column) {
    return panel_of(results, column, some_of(column.width));
}

ShownPanel panel_of(const Results& results, const Column& column, std::vector<std::size_t> cells) {
    const ShownUnit unit = shown_unit(column.unit);
    const std::vector<std::string> labels = cell_labels(results, column);
    ShownPanel panel{column.meaning, unit.label, {}};
    for (const std::size_t cell : cells) {
        ShownSeries series{column.name + labels[cell], {}, column.name, cell};
        for (std::size_t step = 0; step < results.time.size(); ++step)
            series.values.push_back(unit.from_si(column.values[step * column.width + cell]));
        panel.series.push_back(std::move(series));
    }
    return panel;
}

Chart series_chart(const std::string& title, const std::string& unit,
                   std::span<const FigureLine> lines) {
    Reach along, up;
    for (const FigureLine& line : lines)
        for (const ChartPoint& point : line.points) {
            along.take(point.x);
            up.take(point.y);
        }
    // Nothing is a level worth seeing, unless all is far from it.
    if (up.least > 0 && up.least < 0.5 * up.most) up.least = 0;
    const double room = 0.04 * (up.most - up.least);
    Chart chart(title, title + " over the time after lighting",
                {"minutes after lighting", along.least, along.most},
                {unit.empty() ? "plain number" : unit, up.least == 0 ? 0 : up.least - room,
                 up.most + room});
    if (up.least < 0 && up.most > 0) chart.level_rule(0);
    for (const FigureLine& line : lines) {
        if (line.dots) {
            for (const ChartPoint& point : line.points)
                chart.mark(point, ChartMark::filled, line.style.colour);
            chart.key_mark(ChartMark::filled, line.style.colour, line.label);
            continue;
        }
        chart.line(line.points, line.style);
        if (!line.label.empty()) chart.key_line(line.style, line.label);
    }
    return chart;
}

std::string series_svg(const Results& results, std::string_view title) {
    std::vector<ShownPanel> panels;
    for (const Column& column : results.columns) {
        ShownPanel panel = panel_of(results, column);
        const auto same = std::find_if(panels.begin(), panels.end(),
                                       [&](const ShownPanel& p) { return p.unit == panel.unit; });
        if (same == panels.end()) {
            panels.push_back(std::move(panel));
        } else {
            same->title.clear();  // that of one column would be wrong
            std::move(panel.series.begin(), panel.series.end(), std::back_inserter(same->series));
        }
    }
    std::vector<Chart> charts;
    charts.reserve(panels.size());
    for (ShownPanel& panel : panels) {
        panel.title =
            std::string(title) + (title.empty() || panel.title.empty() ? "" : ": ") + panel.title;
        if (panel.series.size() > most_lines)
            throw InputError(
                fmt::format("a figure holds {} lines at most, not {}: name fewer "
                            "columns, or single cells of them",
                            most_lines, panel.series.size()));
    }
    for (const ShownPanel& panel : panels) charts.push_back(chart_of(results.time, panel));
    return stacked_svg(charts);
}

}  // namespace drawwell

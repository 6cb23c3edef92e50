#include <fmt/format.h>

#include <limits>

#include "cli/report/series_svg.h"
#include "cli/report/shown_unit.h"
#include "cli/study/fit/match_page.h"

namespace drawwell {
namespace {

constexpr double gap = 3;  // usual spacings of readings from which a line is parted

/// A line through readings, parted where some are missing.
std::vector<ChartPoint> line_of(const MatchedSensor& sensor, const Numbers& values) {
    const double usual =
        (sensor.time.back() - sensor.time.front()) / static_cast<double>(sensor.time.size());
    std::vector<ChartPoint> points;
    for (std::size_t i = 0; i < sensor.time.size(); ++i) {
        if (i > 0 && sensor.time[i] - sensor.time[i - 1] > gap * usual)
            points.push_back(
                {to_minutes(sensor.time[i]), std::numeric_limits<double>::quiet_NaN()});
        points.push_back({to_minutes(sensor.time[i]), values[i]});
    }
    return points;
}

Numbers shown_values(const Numbers& values, const ShownUnit& unit) {
    Numbers shown;
    for (const double value : values) shown.push_back(unit.from_si(value));
    return shown;
}

}  // namespace

std::string match_svg(const Match& match, const std::string& log) {
    std::vector<Chart> charts;
    std::vector<FigureLine> left;
    for (std::size_t s = 0; s < match.sensors.size(); ++s) {
        const MatchedSensor& sensor = match.sensors[s];
        const ShownUnit unit = shown_unit(sensor.sensor.unit);
        const auto line = [&](const char* label, const Numbers& values, std::size_t colour,
                              bool dashed) {
            return FigureLine{
                label, line_of(sensor, shown_values(values, unit)), {line_colour(colour), dashed}};
        };
        const std::vector<FigureLine> lines{line("measured", sensor.measured, 5, false),
                                            line("as filed", sensor.filed, 0, true),
                                            line("matched", sensor.matched, 1, false)};
        charts.push_back(series_chart(
            log + ": " + sensor.sensor.header + ", " + sensor.sensor.what(), unit.label, lines));
        Numbers over;
        for (std::size_t i = 0; i < sensor.time.size(); ++i)
            over.push_back((sensor.measured[i] - sensor.matched[i]) / sensor.sensor.noise.reading);
        left.push_back(
            {sensor.sensor.header, line_of(sensor, over), {line_colour(s), line_dashed(s)}});
    }
    charts.push_back(series_chart(log + ": measured less matched, over the noise", "", left));
    return stacked_svg(charts);
}

}  // namespace drawwell

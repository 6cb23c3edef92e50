#include "cli/report/web/likely_bar.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "cli/read/units.h"
#include "cli/report/shown_unit.h"

namespace drawwell {
namespace {

/// An answer that is the peak of a column's first or last cell.
struct Peak {
    std::string_view column;
    bool last;
    std::string_view answer;
};

constexpr Peak peaks[] = {
    {"plate_temperature", false, "plate_centre_max_c"},
    {"plate_temperature", true, "plate_rim_max_c"},
    {"barrel_temperature", false, "barrel_top_max_c"},
    {"barrel_temperature", true, "barrel_foot_max_c"},
    {"outlet_gas_temperature", false, "exit_gas_max_c"},
    {"flue_top_temperature", false, "flue_top_max_c"},
};

std::string_view answer_of(const Column& column, std::size_t cell) {
    for (const Peak& peak : peaks)
        if (peak.column == column.name && cell == (peak.last ? column.width - 1 : 0))
            return peak.answer;
    return {};
}

std::size_t highest(const std::vector<double>& values) {
    std::size_t at = 0;
    for (std::size_t i = 1; i < values.size(); ++i)
        if (!(values[i] <= values[at])) at = i;
    return at;
}

}  // namespace

std::optional<LikelyBar> likely_bar(const PageRun& run, const ShownSeries& series) {
    const BurnResult& burn = run.burn;
    const Column* column = burn.results.find(series.column);
    if (!column || burn.likely.days == 0 || series.values.empty()) return {};
    if (column->name == "reserve_draw") {
        const LikelyFigure* figure = burn.likely.find("reserve_draw_min_pa");
        const auto& time = burn.summary.reserve_draw_min_time;
        if (!figure || !time) return {};
        return LikelyBar{to_minutes(*time), figure->low, figure->high};
    }
    const LikelyFigure* figure = burn.likely.find(answer_of(*column, series.cell));
    if (!figure) return {};
    return LikelyBar{to_minutes(burn.results.time[highest(series.values)]), figure->low,
                     figure->high};
}

std::optional<LikelyBand> likely_band(const PageRun& run, const ShownSeries& series) {
    const LikelyRanges& likely = run.burn.likely;
    const Column *low = likely.low.find(series.column), *high = likely.high.find(series.column);
    if (series.cell != 0 || !low || !high || likely.low.time != run.burn.results.time) return {};
    const ShownUnit unit = shown_unit(low->unit);
    LikelyBand band;
    for (const double value : low->values) band.low.push_back(unit.from_si(value));
    for (const double value : high->values) band.high.push_back(unit.from_si(value));
    return band;
}

}  // namespace drawwell

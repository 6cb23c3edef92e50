#include "cli/study/likely_bands.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <string_view>
#include <utility>
#include <vector>

#include "cli/study/likely.h"
#include "cli/study/series_bytes.h"

namespace drawwell {
namespace {

// Few, so that a thousand days fit in memory.
constexpr std::string_view banded[] = {"drive",
                                       "reserve_draw",
                                       "plate_temperature",
                                       "barrel_temperature",
                                       "outlet_gas_temperature",
                                       "flue_top_temperature"};

/// The first cell of a column at every instant.
Column first_cell(const Column& column, std::size_t instants) {
    Column first{column.name, column.unit, column.meaning, "", 1, {}};
    for (std::size_t i = 0; i < instants; ++i)
        first.values.push_back(column.values[i * column.width]);
    return first;
}

}  // namespace

void DaySeries::keep(const Row& day) {
    if (!day.error.empty()) return;
    const Results all = results_of(day.series);
    Results kept;
    kept.time = all.time;
    for (const std::string_view name : banded)
        if (const Column* column = all.find(name); column && column->width > 0)
            kept.columns.push_back(first_cell(*column, all.time.size()));
    const std::lock_guard lock(keeping_);
    days_.insert_or_assign(day.identity, std::move(kept));
}

const Results& DaySeries::of(const Row& day) const {
    const auto found = days_.find(day.identity);
    if (found == days_.end()) throw std::logic_error("the series of a day are missing");
    return found->second;
}

void add_bands(LikelyRanges& ranges, std::span<const Row> days, const DaySeries& series) {
    std::vector<const Results*> known;
    for (const Row& day : days)
        if (day.error.empty()) known.push_back(&series.of(day));
    if (known.empty()) return;
    for (Results* side : {&ranges.low, &ranges.high}) {
        side->time = known.front()->time;
        for (const Column& column : known.front()->columns)
            side->columns.push_back({column.name, column.unit, column.meaning, "", 1, {}});
    }
    for (const Results* day : known)
        if (day->time != ranges.low.time || day->columns.size() != ranges.low.columns.size())
            throw std::logic_error("days have series of different instants or columns");
    std::vector<double> values;
    for (std::size_t k = 0; k < ranges.low.columns.size(); ++k) {
        for (std::size_t i = 0; i < ranges.low.time.size(); ++i) {
            values.clear();
            for (const Results* day : known)
                if (const double value = day->columns[k].values[i]; std::isfinite(value))
                    values.push_back(value);
            std::sort(values.begin(), values.end());
            const double none = std::numeric_limits<double>::quiet_NaN();
            ranges.low.columns[k].values.push_back(values.empty() ? none
                                                                  : quantile_of(values, 0.05));
            ranges.high.columns[k].values.push_back(values.empty() ? none
                                                                   : quantile_of(values, 0.95));
        }
    }
}

}  // namespace drawwell

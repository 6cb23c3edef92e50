#include "cli/study/likely_bands.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>
#include <vector>

#include "cli/study/likely.h"

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
std::vector<double> first_cell(const Column& column, std::size_t instants) {
    std::vector<double> values(instants);
    for (std::size_t i = 0; i < instants; ++i) values[i] = column.values[i * column.width];
    return values;
}

}  // namespace

void add_bands(LikelyRanges& ranges, std::span<const Row> days, const SeriesStore& store) {
    std::vector<std::vector<std::vector<double>>> known(std::size(banded));  // [column][day]
    for (const Row& day : days) {
        if (day.identity.empty() || !store.holds(day.identity)) continue;
        const Results results = store.read(day.identity);
        if (ranges.low.time.empty()) ranges.low.time = ranges.high.time = results.time;
        if (results.time != ranges.low.time) continue;
        for (std::size_t k = 0; k < known.size(); ++k)
            if (const Column* column = results.find(banded[k]); column && column->width > 0) {
                if (known[k].empty())
                    for (Results* side : {&ranges.low, &ranges.high})
                        side->columns.push_back(
                            {column->name, column->unit, column->meaning, "", 1, {}});
                known[k].push_back(first_cell(*column, results.time.size()));
            }
    }
    std::vector<double> values;
    for (std::size_t k = 0; k < known.size(); ++k) {
        if (known[k].empty()) continue;
        const auto named = [&](const Column& column) { return column.name == banded[k]; };
        Column &low = *std::ranges::find_if(ranges.low.columns, named),
               &high = *std::ranges::find_if(ranges.high.columns, named);
        for (std::size_t i = 0; i < ranges.low.time.size(); ++i) {
            values.clear();
            for (const auto& day : known[k])
                if (std::isfinite(day[i])) values.push_back(day[i]);
            std::sort(values.begin(), values.end());
            const double none = std::numeric_limits<double>::quiet_NaN();
            low.values.push_back(values.empty() ? none : quantile_of(values, 0.05));
            high.values.push_back(values.empty() ? none : quantile_of(values, 0.95));
        }
    }
}

}  // namespace drawwell

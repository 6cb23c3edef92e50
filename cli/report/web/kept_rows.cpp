#include "cli/report/web/kept_rows.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

namespace drawwell {
namespace {

/// Adds the rows of [from, to) in which a series is at its highest, lowest, or no number.
void keep_extremes(std::vector<std::size_t>& kept, std::span<const double> values, std::size_t from,
                   std::size_t to) {
    std::optional<std::size_t> lowest, highest, gap;
    for (std::size_t row = from; row < to; ++row) {
        if (!std::isfinite(values[row])) {
            if (!gap) gap = row;
            continue;
        }
        if (!lowest || values[row] < values[*lowest]) lowest = row;
        if (!highest || values[row] > values[*highest]) highest = row;
    }
    for (const auto& row : {lowest, highest, gap})
        if (row) kept.push_back(*row);
}

}  // namespace

std::vector<std::size_t> kept_rows(std::span<const std::span<const double>> series,
                                   std::size_t rows, std::size_t most) {
    std::vector<std::size_t> kept;
    if (rows <= most) {
        kept.resize(rows);
        std::iota(kept.begin(), kept.end(), std::size_t{0});
        return kept;
    }
    // Up to three rows of each series in each stretch, and the two ends.
    const std::size_t of_a_stretch = std::max<std::size_t>(3 * series.size(), 1);
    const std::size_t stretches =
        std::max<std::size_t>((std::max<std::size_t>(most, 2) - 2) / of_a_stretch, 1);
    kept = {0, rows - 1};
    for (std::size_t i = 0; i < stretches; ++i)
        for (const std::span<const double> values : series)
            keep_extremes(kept, values, i * rows / stretches, (i + 1) * rows / stretches);
    std::sort(kept.begin(), kept.end());
    kept.erase(std::unique(kept.begin(), kept.end()), kept.end());
    return kept;
}

}  // namespace drawwell

#include "cli/report/web/moment.h"

#include <algorithm>

namespace drawwell {

std::optional<Moment> moment_at(const std::vector<double>& time, double at) {
    if (time.empty() || !(at >= time.front()) || !(at <= time.back())) return {};
    const auto after = std::upper_bound(time.begin(), time.end(), at);
    const auto row = static_cast<std::size_t>(after - time.begin()) - 1;
    if (after == time.end()) return Moment{row, 0};
    return Moment{row, (at - time[row]) / (*after - time[row])};
}

double value_at(const Column& column, std::size_t cell, const Moment& moment) {
    const double from = column.values[moment.row * column.width + cell];
    if (!(moment.share > 0)) return from;
    const double to = column.values[(moment.row + 1) * column.width + cell];
    return from + moment.share * (to - from);
}

}  // namespace drawwell

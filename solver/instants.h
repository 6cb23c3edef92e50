#pragma once

#include <vector>

namespace drawwell {

/// Instants no farther apart than this [s] are one. The same time written in other units, or summed
/// in another order, differs by rounding: by less than a nanosecond within ten days. Nobody who
/// moves a damper means a microsecond, and no step of the solver needs to be so short.
inline constexpr double same_instant = 1e-6;

/// The instants in increasing order; of those that are one, the earliest.
std::vector<double> distinct_instants(std::vector<double> instants);

/// The one of `distinct` (increasing) that this time is, or the time itself.
double instant_among(const std::vector<double>& distinct, double time);

}  // namespace drawwell

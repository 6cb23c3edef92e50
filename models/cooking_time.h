#pragma once

#include <span>

#include "models/summary.h"
#include "solver/constants.h"

namespace drawwell {

/// From here a surface fries [K]: griddle temperatures of cooking pages, grouped (our choice).
inline constexpr double fry_from = 175 + constants::ice_point;

/// How long a temperature history [K] at those times [s] stayed in each cooking band; straight
/// lines between samples.
CookingTime cooking_time(std::span<const double> time, std::span<const double> temperature);

/// Mean temperature [K] of the plate under a pot of 200 mm at its centre, weighted by area;
/// `edge` are the radii [m] of the rings' edges, one more than `ring`.
double mean_under_pot(std::span<const double> edge, std::span<const double> ring);

}  // namespace drawwell

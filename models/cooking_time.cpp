#include "models/cooking_time.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "solver/constants.h"

namespace drawwell {
namespace {

// Bands of the plate [K]: griddle temperatures of cooking pages, grouped (our choice).
constexpr double warm_from = 60 + constants::ice_point, simmer_from = 120 + constants::ice_point,
                 sear_from = 230 + constants::ice_point;
constexpr double pot_radius = 0.1;  // [m]

/// Share of the straight line from a to b that lies in [low, high).
double share_within(double a, double b, double low, double high) {
    const double bottom = std::min(a, b), top = std::max(a, b);
    if (top - bottom < 1e-9) return a >= low && a < high ? 1 : 0;
    return std::max(0.0, std::min(top, high) - std::max(bottom, low)) / (top - bottom);
}

}  // namespace

CookingTime cooking_time(std::span<const double> time, std::span<const double> temperature) {
    CookingTime sum;
    for (std::size_t i = 1; i < time.size(); ++i) {
        const double a = temperature[i - 1], b = temperature[i], span = time[i] - time[i - 1];
        sum.warm += span * share_within(a, b, warm_from, simmer_from);
        sum.simmer += span * share_within(a, b, simmer_from, fry_from);
        sum.fry += span * share_within(a, b, fry_from, sear_from);
        sum.sear += span * share_within(a, b, sear_from, std::numeric_limits<double>::max());
    }
    return sum;
}

double mean_under_pot(std::span<const double> edge, std::span<const double> ring) {
    double sum = 0, area = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const double outer = std::min(edge[i + 1], pot_radius);
        if (outer <= edge[i]) break;
        const double share = outer * outer - edge[i] * edge[i];
        sum += share * ring[i];
        area += share;
    }
    return sum / area;
}

}  // namespace drawwell

#include "models/fire/fuel_lot.h"

#include <algorithm>
#include <cmath>

namespace drawwell {
namespace {

constexpr double last_splinter = 0.01;  // [-] of a lot, below which its rate dies away; a blur

}  // namespace

double FuelLot::share_left(double wood) const {
    return std::clamp(wood / dry_mass, 0.0, 1.0);
}

double FuelLot::foot_left(double wood) const {
    return std::min(1.0, share_left(wood) / foot_share);
}

double FuelLot::lit_area_left(double wood) const {
    return lit_area * std::sqrt(foot_left(wood));
}

double FuelLot::section_left(double wood) const {
    return section * foot_left(wood);
}

double FuelLot::losing_share(double rate, double wood) const {
    return std::max(rate, 0.0) * (1 + last_splinter) /
           (dry_mass * (share_left(wood) + last_splinter));
}

double FuelLot::losing(double rate, double wood) const {
    return losing_share(rate, wood) * dry_mass * share_left(wood);
}

double FuelLot::losing_slope(double rate, double wood) const {
    return losing_share(rate, wood) * last_splinter / (share_left(wood) + last_splinter);
}

double perimeter_apart(int pieces, double side) {
    return 4 * pieces * side;
}

double perimeter_bundled(int pieces, double side) {
    return 2 * std::ceil(2 * std::sqrt(pieces)) * side;
}

}  // namespace drawwell

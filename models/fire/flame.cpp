#include "models/fire/flame.h"

#include <algorithm>
#include <cmath>

namespace drawwell {
namespace {

constexpr double shortest_flame = 0.05;  // [m]
constexpr double nothing_left = 1e-7;    // [kg/kg] of oxygen demand
constexpr double tip_blur = 0.1;         // [-] of the flame's length, either side of its tip
constexpr double freezing_blur = 25.0;   // [K] either side of the freezing temperature

double smooth_step(double x) {
    const double s = std::clamp(x, 0.0, 1.0);
    return s * s * (3 - 2 * s);
}

}  // namespace

double flame_length(double heat_release, double diameter) {
    const double kilowatts = std::max(heat_release, 0.0) / 1000;
    return std::max(0.235 * std::pow(kilowatts, 0.4) - 1.02 * diameter, shortest_flame);
}

double oxygen_demand(const Composition& mass_fraction, const GasModel& model) {
    return mass_fraction[volatiles] * model.oxygen_demand() -
           mass_fraction[co] * model.co_burning()[o2];
}

double burn_on(GasState& gas, double length, double temperature, const GasModel& model,
               const FlameLimits& limits) {
    const double demand = oxygen_demand(gas.mass_fraction, model);
    const double oxygen = gas.mass_fraction[o2];
    const double path = gas.flame.path + length / 2;
    gas.flame.path += length;
    if (demand < nothing_left || oxygen <= 0 || gas.flame.oxygen <= 0) return 0;

    const double hot =
        smooth_step((temperature - limits.freezing_temperature) / (2 * freezing_blur) + 0.5);
    const double within = smooth_step((1 - path / gas.flame.length) / (2 * tip_blur) + 0.5);
    const double way = length * (1 - (1 - hot) * (1 - within));
    const double mixing_length = gas.flame.length / 3;

    // 1/V = expm1(z)/b + exp(z)/V0 with b the oxygen in excess: the closed form, also at b = 0.
    const double strides = way / (gas.flame.oxygen * mixing_length);
    const double excess = oxygen - demand;
    const double z = std::min(excess * strides, 500.0);
    const double growth = std::abs(z) < 1e-8 ? strides : std::expm1(z) / excess;
    const double left = 1 / (growth + std::exp(z) / demand);
    const double share = std::clamp(1 - left / demand, 0.0, 1.0);

    const Composition volatile_change = model.volatile_burning();
    const Composition co_change = model.co_burning();
    const double burnt_volatiles = share * gas.mass_fraction[volatiles];
    const double burnt_co = share * gas.mass_fraction[co];
    for (std::size_t i = 0; i < species_count; ++i)
        gas.mass_fraction[i] += burnt_volatiles * volatile_change[i] + burnt_co * co_change[i];
    Composition burnt{};
    burnt[volatiles] = burnt_volatiles;
    burnt[co] = burnt_co;
    return model.higher_heating_value(burnt);
}

}  // namespace drawwell

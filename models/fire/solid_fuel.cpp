#include "models/fire/solid_fuel.h"

#include <algorithm>
#include <cmath>

#include "models/fire/flame.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double carbon_molar_mass = 12.011e-3;           // [kg/mol]
constexpr double dioxide_formation = -393.51e3;           // [J/mol] JANAF, from memory
constexpr double liquid_water_heat_capacity = 4186;       // [J/(kg K)]
constexpr double hydrogen_in_water = 2 * 1.008 / 18.015;  // [-]
constexpr double ground = 298.15;                         // [K]

}  // namespace

double carbon_heating_value() {
    return -dioxide_formation / carbon_molar_mass;
}

VolatileGas volatile_gas(const SolidFuel& fuel) {
    const double share = 1 - fuel.char_yield;
    const double carbon = (fuel.wood.carbon - fuel.char_yield) / share;
    if (!(carbon > 0)) throw InputError(fuel.wood.name + ": less carbon than its char would take");
    VolatileGas gas{
        .carbon = carbon,
        .hydrogen = fuel.wood.hydrogen / share,
        .oxygen = 1 - carbon - fuel.wood.hydrogen / share,
        .higher_heating_value =
            (fuel.wood.higher_heating_value - fuel.char_yield * carbon_heating_value()) / share};
    const GasModel cold(gas);
    gas.higher_heating_value -= cold.species_enthalpy(volatiles, pyrolysis_temperature) -
                                cold.species_enthalpy(volatiles, ground);
    return gas;
}

double liquid_water_enthalpy(const GasModel& model, double temperature) {
    Composition steam{};
    steam[h2o] = 1;
    return model.species_enthalpy(h2o, ground) - model.enthalpy_over_ground(steam, ground, ground) +
           liquid_water_heat_capacity * (temperature - ground);
}

Vapours vapours(const SolidFuel& fuel, double moisture_dry_basis, const GasModel& model) {
    Vapours out;
    out.species[volatiles] = 1 - fuel.char_yield;
    out.species[h2o] = moisture_dry_basis;
    const double warmer = fuel.temperature - ground;  // what the wood brings or lacks
    out.enthalpy =
        out.species[volatiles] * model.species_enthalpy(volatiles, pyrolysis_temperature + warmer) +
        moisture_dry_basis * liquid_water_enthalpy(model, fuel.temperature);
    return out;
}

double limited_by_oxygen(double wanted, double oxygen, double oxygen_per_char) {
    if (!(wanted > 0) || !(oxygen > 0)) return 0;
    return oxygen / oxygen_per_char * -std::expm1(-wanted * oxygen_per_char / oxygen);
}

double oxygen_limit_slope(double wanted, double oxygen, double oxygen_per_char) {
    if (!(oxygen > 0)) return 0;
    return std::exp(-std::max(wanted, 0.0) * oxygen_per_char / oxygen);
}

Flame flame_of(const Arriving& air, const Composition& added, double width, double length_factor,
               double heat_of_char, const GasModel& model) {
    const double mass = air.mass_flow + [&] {
        double sum = 0;
        for (const double flow : added) sum += flow;
        return sum;
    }();
    Composition fuel{};
    fuel[volatiles] = air.species[volatiles] + std::max(added[volatiles], 0.0);
    fuel[co] = air.species[co] + std::max(added[co], 0.0);
    const double arriving = oxygen_demand(air.species, model);
    const double total = oxygen_demand(fuel, model);
    Flame flame;
    // Fuel that arrives burning goes on from where it was; the rest starts here.
    flame.path = total > 0 ? air.gas.flame.path * arriving / total : 0;
    flame.length =
        length_factor * flame_length(model.higher_heating_value(fuel) + heat_of_char, width);
    flame.oxygen = mass > 0 ? std::max(air.species[o2] + added[o2], 0.0) / mass : 0;
    return flame;
}

std::array<double, 4> elements_of_wood(const SolidFuel& fuel, double moisture_dry_basis) {
    return {
        fuel.wood.carbon, fuel.wood.hydrogen + moisture_dry_basis * hydrogen_in_water,
        1 - fuel.wood.carbon - fuel.wood.hydrogen + moisture_dry_basis * (1 - hydrogen_in_water),
        0.0};
}

}  // namespace drawwell

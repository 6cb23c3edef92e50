#include "validation/random_stoves/heat_limit.h"

#include <algorithm>
#include <cmath>

#include "solver/errors.h"

namespace drawwell {
namespace {

/// Enthalpy [J/kg] of the dry air, volatiles, water and char that a kilogram of gas was made of.
double enthalpy_of_reactants(const GasModel& model, const Composition& mass_fraction,
                             const Preheat& preheat) {
    const Composition fresh = dry_air();
    Composition steam{};
    steam[h2o] = 1;
    const auto [carbon, hydrogen, oxygen, nitrogen] = model.elements(mass_fraction);
    const auto in_water = model.elements(steam);
    const double air = nitrogen / fresh[n2];
    const double from_fuel = oxygen - air * fresh[o2];
    const VolatileGas& gas = model.volatile_gas();
    // volatiles * [H, O of them] + water * [H, O of it] = [H, O left]
    const double apart = gas.hydrogen * in_water[2] - gas.oxygen * in_water[1];
    if (!(std::abs(apart) > 1e-5))
        throw InputError("the volatiles cannot be told from carbon and water");
    const double given_off = (hydrogen * in_water[2] - from_fuel * in_water[1]) / apart;
    const double water = (gas.hydrogen * from_fuel - gas.oxygen * hydrogen) / apart;
    return air * model.mixture(fresh).enthalpy(preheat.walls) +
           given_off * model.species_enthalpy(volatiles, std::max(preheat.walls, preheat.fuel)) +
           water * model.species_enthalpy(h2o, preheat.walls);
}

/// Burns as much of one fuel as the oxygen allows; `burning` is what a kilogram of it changes.
void burn(Composition& gas, Species fuel, const Composition& burning) {
    const double burnt = std::max(0.0, std::min(gas[fuel], gas[o2] / -burning[o2]));
    for (std::size_t i = 0; i < species_count; ++i) gas[i] += burnt * burning[i];
}

}  // namespace

double hottest_gas(const GasModel& model, const Composition& mass_fraction,
                   const Preheat& preheat) {
    const double enthalpy = enthalpy_of_reactants(model, mass_fraction, preheat);
    double hottest = 0;
    for (const bool monoxide_first : {true, false}) {
        Composition gas = mass_fraction;
        if (monoxide_first) burn(gas, co, model.co_burning());
        burn(gas, volatiles, model.volatile_burning());
        burn(gas, co, model.co_burning());
        hottest = std::max(hottest, model.mixture(gas).temperature(enthalpy, 1500));
    }
    return hottest;
}

}  // namespace drawwell

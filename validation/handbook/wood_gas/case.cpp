#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/read_library.h"
#include "models/fire/flame.h"
#include "models/fire/solid_fuel.h"
#include "models/gas/gas_model.h"
#include "models/laws/water.h"
#include "solver/constants.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/wood_gas";
constexpr double ice = constants::ice_point;

struct FlueGas {
    Composition mass{};  // [kg] per kilogram of dry wood
    Mixture mixture;     // of a kilogram of it
    double air = 0;      // [kg] per kilogram of dry wood

    double moles(Species s) const {
        constexpr double kilomole[] = {28.155, 31.998, 44.009, 18.015, 28.010, 30.026};
        return mass[s] / kilomole[s];
    }
    double wet() const { return dry() + moles(h2o); }
    double dry() const { return moles(n2) + moles(o2) + moles(co2); }
};

/// A kilogram of that wood burnt completely, with its water, in so many times the air it needs.
FlueGas burn(double carbon, double hydrogen, double moisture_dry_basis, double air_ratio,
             double humidity) {
    Wood wood;
    wood.carbon = carbon;
    wood.hydrogen = hydrogen;
    wood.oxygen = 1 - carbon - hydrogen;
    wood.higher_heating_value = 19.8e6;
    const SolidFuel fuel{.wood = wood, .char_yield = 0.2};
    const GasModel model(volatile_gas(fuel));
    Composition mass{};
    const Composition volatile_gain = model.volatile_burning(), char_gain = model.char_burning(0);
    for (std::size_t s = 0; s < species_count; ++s)
        mass[s] = (1 - fuel.char_yield) * volatile_gain[s] + fuel.char_yield * char_gain[s];
    mass[volatiles] = 0;
    const double air = -mass[o2] * air_ratio / dry_air()[o2];
    for (std::size_t s = 0; s < species_count; ++s) mass[s] += air * dry_air()[s];
    mass[h2o] += moisture_dry_basis + humidity * air;
    Composition share{};
    double sum = 0;
    for (const double part : mass) sum += part;
    for (std::size_t s = 0; s < species_count; ++s) share[s] = mass[s] / sum;
    return {mass, model.mixture(share), air};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("burnt wood leaves the gas that stoichiometry says") {
        constexpr struct {
            double air_ratio, air, co2_dry, o2_dry, h2o_wet, dew;  // [kg/kg], [%], [degC]
        } table[] = {{1.0, 5.91, 20.51, 0, 17.70, 57.8},
                     {1.5, 8.87, 13.65, 7.01, 12.52, 50.6},
                     {2.0, 11.82, 10.23, 10.50, 9.68, 45.5},
                     {3.0, 17.74, 6.81, 13.99, 6.66, 38.4}};
        double shares = 0, air = 0, dew = 0;
        for (const auto& row : table) {
            const FlueGas gas = burn(0.50, 0.06, 0.25, row.air_ratio, 0);
            shares = std::max({shares, std::abs(100 * gas.moles(co2) / gas.dry() - row.co2_dry),
                               std::abs(100 * gas.moles(o2) / gas.dry() - row.o2_dry),
                               std::abs(100 * gas.moles(h2o) / gas.wet() - row.h2o_wet)});
            air = std::max(air, share_off(gas.air, row.air));
            dew = std::max(
                dew, std::abs(dew_point(101325 * gas.moles(h2o) / gas.wet()) - ice - row.dew));
        }
        compare(
            {name, "carbon dioxide, oxygen, vapour, worst of air ratios 1 to 3 [%]", shares, 0.1});
        compare({name, "air for a kilogram of dry wood, worst share off [-]", air, 5e-3});
        compare({name, "dew point, worst of air ratios 1 to 3 [K]", dew, 0.3});

        const FlueGas twice = burn(0.493, 0.061, 0.15 / 0.85, 2, 5e-3);
        constexpr std::pair<double, double> capacity[] = {{20, 1047},  {200, 1090}, {400, 1145},
                                                          {600, 1204}, {800, 1254}, {1000, 1292}};
        double worst = 0;
        for (const auto& [celsius, expected] : capacity)
            worst =
                std::max(worst, share_off(twice.mixture.heat_capacity(celsius + ice), expected));
        compare({name, "heat capacity, air ratio 2, 20 to 1000 degC, worst share off [-]", worst,
                 0.01});
        compare_beside({name, "gas constant of flue gas, air ratio 2 [J/kgK]", 286.6,
                        burn(0.50, 0.06, 0.25, 2, 0).mixture.gas_constant(), 3e-3});
        compare_beside({name, "density at 0 degC, hardwood, air ratio 2 [kg/m3]", 1.289,
                        twice.mixture.density(ice, 101325), 5e-3});
        compare_beside({name, "gas of a kilogram of hardwood at 15 %, air ratio 2 [kg]", 10.90,
                        [&] {
                            double sum = 0;
                            for (const double part : twice.mass) sum += part;
                            return 0.85 * 0.995 * sum;
                        }(),
                        0.01});
    }
}

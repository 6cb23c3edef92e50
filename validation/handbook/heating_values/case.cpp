#include <doctest/doctest.h>

#include <cmath>

#include "cli/read/read_library.h"
#include "models/fire/flame.h"
#include "models/fire/solid_fuel.h"
#include "models/laws/heating_value.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/heating_values";

WoodAnalysis ash_free(double carbon, double hydrogen, double oxygen, double nitrogen, double ash) {
    const double rest = 1 - ash;
    return {rest * carbon, rest * hydrogen, rest * oxygen, rest * nitrogen, ash};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("wood gives the heat that the correlations and calorimeters say") {
        const double hard = wood_heating_value(ash_free(0.493, 0.061, 0.444, 0.002, 0.005));
        const double soft = wood_heating_value(ash_free(0.509, 0.063, 0.426, 0.002, 0.005));
        compare_beside({name, "Channiwala and Parikh, hardwood [MJ/kg]", 19.69, hard / 1e6, 1e-3});
        compare_beside({name, "Channiwala and Parikh, softwood [MJ/kg]", 20.67, soft / 1e6, 1e-3});
        compare_beside({name, "Channiwala and Parikh, cellulose [MJ/kg]", 17.74,
                        wood_heating_value({0.4445, 0.0622, 0.4934, 0, 0}) / 1e6, 2e-3});
        compare_beside({name, "Parikh, 80 % volatiles, hardwood [MJ/kg]", 19.36, hard / 1e6, 0.03});
        compare_beside({name, "13.23 MJ/kg of oxygen, hardwood, to vapour [MJ/kg]", 17.8,
                        hard / 1e6 - 2.443 * 8.937 * 0.061 * 0.995, 0.04});

        // What the program's own wood gives when char and volatiles of a kilogram burn.
        const Library library = read_library();
        const SolidFuel fuel{.wood = library.woods.at("ash"),
                             .char_yield = library.bed.char_yield.value};
        const GasModel model(volatile_gas(fuel));
        Composition given{};
        given[volatiles] = 1 - fuel.char_yield;
        const double oxygen = oxygen_demand(given, model) +
                              fuel.char_yield * 31.998 / 12.011;  // [kg] per kg of dry wood
        compare_beside(
            {name, "oxygen for a kilogram of hardwood [kg]", 1.347, 0.995 * oxygen, 5e-3});
        // Put in at the ground temperature; vapours leave hot by what it took to heat them.
        SolidFuel cold = fuel;
        cold.temperature = 298.15;
        const Vapours dry = vapours(cold, 0, model);
        const double heat = dry.enthalpy - model.ground_enthalpy(dry.species, 298.15) +
                            fuel.char_yield * carbon_heating_value();
        compare_beside({name, "hardwood, burnt by parts [MJ/kg]", 19.69, 0.995 * heat / 1e6, 5e-3});
        const double moisture = 0.25;  // [kg] per dry kilogram: 20 % of the whole
        const Vapours moist = vapours(cold, moisture, model);
        Composition water{};
        water[h2o] = 1;
        const double vapour_formed =
            moisture + 8.937 * fuel.wood.hydrogen;  // [kg] per kilogram dry and free of ash
        const double to_vapour = moist.enthalpy - model.ground_enthalpy(moist.species, 298.15) +
                                 fuel.char_yield * carbon_heating_value() -
                                 vapour_formed * model.excess_heat(water, 298.15, 298.15).latent;
        compare_beside({name, "hardwood of 20 % moisture, to vapour [MJ/kg]", 14.21,
                        0.8 * 0.995 * to_vapour / 1e6, 5e-3});
    }
}

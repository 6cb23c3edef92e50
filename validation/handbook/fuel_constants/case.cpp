#include <doctest/doctest.h>

#include "cli/read/read_library.h"
#include "models/fire/flame.h"
#include "models/fire/solid_fuel.h"
#include "validation/compare.h"

using namespace drawwell;

TEST_SUITE("quick") {
    TEST_CASE(
        "wood takes the air, splits its heat and gives heat for oxygen as the constants say") {
        constexpr auto name = "handbook/fuel_constants";
        const Library library = read_library();
        const SolidFuel fuel{.wood = library.woods.at("ash"),
                             .char_yield = library.bed.char_yield.value};
        const GasModel model(volatile_gas(fuel));
        Composition given{};
        given[volatiles] = 1 - fuel.char_yield;
        const double for_char = fuel.char_yield * 31.998 / 12.011;  // [kg] of oxygen
        const double oxygen = oxygen_demand(given, model) + for_char;
        const double heat = fuel.wood.higher_heating_value;
        compare_beside({name, "Kubler, air for oven-dry wood [kg/kg]", 6,
                        (1 - fuel.wood.ash) * oxygen / dry_air()[o2], 0.05});
        compare_beside({name, "Baldwin, share of the heat that char gives [-]", 1.0 / 3,
                        fuel.char_yield * carbon_heating_value() / heat, 0.25});
        const double vapour = 8.937 * fuel.wood.hydrogen * 2.443e6;  // [J/kg] left in the steam
        compare_beside({name, "oxygen consumption, lower heat for oxygen [MJ/kg]", 13.1,
                        (heat - vapour) / oxygen / 1e6, 0.05});
    }
}

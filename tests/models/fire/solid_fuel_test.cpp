#include "models/fire/solid_fuel.h"

#include <doctest/doctest.h>

#include "models/fire/flame.h"
#include "solver/errors.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

const GasModel& model() {
    static const GasModel gas(volatile_gas(plain_fuel()));
    return gas;
}

Arriving air(double flow) {
    Arriving out;
    out.mass_flow = flow;
    for (std::size_t i = 0; i < species_count; ++i) out.species[i] = flow * dry_air()[i];
    out.gas.mass_fraction = dry_air();
    return out;
}

}  // namespace

TEST_SUITE("models/fire/solid_fuel") {
    TEST_CASE("char and vapours hold the elements of the wood and its water") {
        for (const double moisture : {0.0, 0.2, 0.6})
            for (const double char_yield : {0.1, 0.2, 0.3}) {
                SolidFuel fuel = plain_fuel();
                fuel.char_yield = char_yield;
                const GasModel gas(volatile_gas(fuel));
                auto given = gas.elements(vapours(fuel, moisture, gas).species);
                given[0] += char_yield;
                const auto wood = elements_of_wood(fuel, moisture);
                for (std::size_t e = 0; e < wood.size(); ++e)
                    CHECK(given[e] == doctest::Approx(wood[e]).epsilon(1e-9));
                CHECK(sum_of(wood) == near(1 + moisture, 1e-12));
            }
    }

    TEST_CASE(
        "the heating value closes: volatiles, the heat they leave with, and char are the "
        "wood's") {
        const SolidFuel fuel = plain_fuel();
        const VolatileGas gas = volatile_gas(fuel);
        const double warm = model().species_enthalpy(volatiles, pyrolysis_temperature) -
                            model().species_enthalpy(volatiles, 298.15);
        CHECK(warm > 0.3e6);  // 325 K at some 1500 J/(kg K)
        CHECK((1 - fuel.char_yield) * (gas.higher_heating_value + warm) +
                  fuel.char_yield * carbon_heating_value() ==
              near(fuel.wood.higher_heating_value, 1e-12));
        // Graphite: 32.8 MJ/kg, from memory.
        CHECK(carbon_heating_value() == near(32.8e6, 2e-3));
    }

    TEST_CASE("burning vapours and char from wood at 25 degC frees its heating value") {
        // By enthalpy, apart from the constants above: wood's own is that of its products plus its
        // heating value; what it gives off holds the same.
        SolidFuel fuel = plain_fuel();
        fuel.temperature = 298.15;
        for (const double moisture : {0.0, 0.25}) {
            const Vapours given = vapours(fuel, moisture, model());
            double products = model().ground_enthalpy(given.species, 298.15);
            // Char becomes carbon dioxide; the oxygen it takes has no enthalpy at 25 degC.
            products -= fuel.char_yield * carbon_heating_value();
            CHECK(given.enthalpy - products == near(fuel.wood.higher_heating_value, 1e-3));
        }
    }

    TEST_CASE("the colder the wood that goes in, the less its vapours bring") {
        SolidFuel cold = plain_fuel(), warm = plain_fuel();
        cold.temperature = 263.15;
        CHECK(vapours(cold, 0.2, model()).enthalpy < vapours(warm, 0.2, model()).enthalpy);
    }

    TEST_CASE("water boils off at the gas's cost") {
        Composition steam{};
        steam[h2o] = 1;
        // 2.44 MJ/kg at 25 degC, from memory of steam tables.
        CHECK(model().species_enthalpy(h2o, 298.15) - liquid_water_enthalpy(model(), 298.15) ==
              near(2.442e6, 2e-3));
        CHECK(liquid_water_enthalpy(model(), 308.15) - liquid_water_enthalpy(model(), 298.15) ==
              near(41860, 1e-6));
    }

    TEST_CASE("wood with less carbon than its char would take is refused") {
        SolidFuel fuel = plain_fuel();
        fuel.char_yield = 0.55;
        CHECK_THROWS_AS(volatile_gas(fuel), InputError);
    }

    TEST_CASE("char burns as fast as it would, or as the oxygen that arrives allows") {
        const double per_char = 2.5;
        CHECK(limited_by_oxygen(0, 1, per_char) == 0);
        CHECK(limited_by_oxygen(1, 0, per_char) == 0);
        CHECK(limited_by_oxygen(-1, 1, per_char) == 0);
        CHECK(limited_by_oxygen(1e-6, 1, per_char) == near(1e-6, 1e-5));
        CHECK(limited_by_oxygen(1e6, 1e-3, per_char) == near(1e-3 / per_char, 1e-12));
        double last = 0;
        for (double wanted = 1e-5; wanted < 1e-2; wanted *= 1.5) {
            const double rate = limited_by_oxygen(wanted, 1e-3, per_char);
            CHECK(rate > last);
            CHECK(rate < wanted);
            CHECK(rate * per_char < 1e-3);
            last = rate;
        }
    }

    TEST_CASE("a fire begins its flame in the air it has, fuel that arrives burning goes on") {
        Composition added{};
        added[volatiles] = 0.0005;
        const Flame fresh = flame_of(air(0.01), added, 0.12, 1, 0, model());
        CHECK(fresh.path == 0);
        CHECK(fresh.oxygen == near(0.01 * dry_air()[o2] / 0.0105, 1e-12));
        CHECK(
            fresh.length ==
            near(flame_length(0.0005 * model().volatile_gas().higher_heating_value, 0.12), 1e-12));
        CHECK(flame_of(air(0.01), added, 0.12, 1.7, 0, model()).length ==
              near(1.7 * fresh.length, 1e-12));
        CHECK(flame_of(air(0.01), added, 0.12, 1, 5000, model()).length > fresh.length);

        Arriving burning = air(0.01);
        burning.species[volatiles] = 0.0005;
        burning.gas.flame = {.path = 0.4, .length = 0.5, .oxygen = 0.2};
        const Flame joined = flame_of(burning, added, 0.12, 1, 0, model());
        CHECK(joined.path == near(0.2, 1e-9));  // half of the fuel is 0.4 m on
    }
}

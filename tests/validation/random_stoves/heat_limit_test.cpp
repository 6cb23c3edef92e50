#include "validation/random_stoves/heat_limit.h"

#include <doctest/doctest.h>

#include "models/fire/solid_fuel.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// What comes of wood and its water in so much air [kg/kg of dry wood], burnt as far as shares say.
Composition burnt_gas(const GasModel& model, double air, double char_burnt, double share_to_co,
                      double share_burnt) {
    const Composition fresh = dry_air();
    const Vapours given = vapours(plain_fuel(), 0.2, model);
    const Composition glow = model.char_burning(share_to_co), flame = model.volatile_burning();
    Composition gas{};
    double sum = 0;
    for (std::size_t i = 0; i < species_count; ++i) {
        gas[i] = air * fresh[i] + given.species[i] + char_burnt * glow[i] +
                 share_burnt * given.species[volatiles] * flame[i];
        sum += gas[i];
    }
    for (double& share : gas) share /= sum;
    return gas;
}

}  // namespace

TEST_SUITE("validation/random_stoves/heat_limit") {
    TEST_CASE("air alone can be no hotter than what heated it") {
        const GasModel model(volatile_gas(plain_fuel()));
        CHECK(hottest_gas(model, dry_air(), {.walls = 700, .fuel = 900}) == near(700, 1e-6));
    }

    TEST_CASE("how far a lean gas has burnt does not move its bound") {
        const GasModel model(volatile_gas(plain_fuel()));
        const Preheat preheat{.walls = 500, .fuel = 650};
        const double raw = hottest_gas(model, burnt_gas(model, 12, 0, 0, 0), preheat);
        const double done = hottest_gas(model, burnt_gas(model, 12, 0, 0, 1), preheat);
        CHECK(raw == near(done, 1e-4));
        // Air ratio of about two, of which much goes into steam: well over 1000 K, well under 2000.
        CHECK(raw > 1200);
        CHECK(raw < 1900);
    }

    TEST_CASE("the bound gives back the enthalpy of wood that burns without loss") {
        const GasModel model(volatile_gas(plain_fuel()));
        const Vapours given = vapours(plain_fuel(), 0.2, model);
        const Composition gas = burnt_gas(model, 12, 0.2, 0, 1);
        const double air_kept = 300, mass = 12 + 0.8 + 0.2 + 0.2;
        const double enthalpy =
            (12 * model.mixture(dry_air()).enthalpy(air_kept) + given.enthalpy) / mass;
        const double burnt = model.mixture(gas).temperature(enthalpy, 1500);
        const double bound =
            hottest_gas(model, gas, {.walls = air_kept, .fuel = pyrolysis_temperature});
        // The bound has the water as steam, whose boiling the gas had to pay: 0.2 kg of 2.4 MJ/kg
        // in 13.2 kg of 1.3 kJ/(kg K).
        CHECK(bound > burnt);
        CHECK(bound - burnt == near(28, 5));
    }

    TEST_CASE("less air than the fuel needs leaves the bound where its oxygen ends") {
        const GasModel model(volatile_gas(plain_fuel()));
        const Preheat preheat{.walls = 300, .fuel = 650};
        // A kilogram's 0.8 kg of volatiles take 0.82 kg of oxygen, 3.5 kg of air.
        const double rich = hottest_gas(model, burnt_gas(model, 1.5, 0, 0, 0), preheat);
        const double right = hottest_gas(model, burnt_gas(model, 3.6, 0, 0, 0), preheat);
        const double lean = hottest_gas(model, burnt_gas(model, 20, 0, 0, 0), preheat);
        CHECK(rich < right);
        CHECK(lean < right);
    }

    TEST_CASE("hotter walls raise the bound") {
        const GasModel model(volatile_gas(plain_fuel()));
        const Composition gas = burnt_gas(model, 8, 0.1, 0.3, 0.5);
        CHECK(hottest_gas(model, gas, {.walls = 900, .fuel = 650}) >
              hottest_gas(model, gas, {.walls = 300, .fuel = 650}) + 400);
    }
}

#include "models/fire/table_fire.h"

#include <doctest/doctest.h>

#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

std::shared_ptr<const GasModel> model() {
    return std::make_shared<const GasModel>(volatile_gas(plain_fuel()));
}

BurnRateFire burn_rate_fire() {
    return {{.dry_rate = Table({0, 600, 1200}, {0, 0.001, 0}),
             .moisture_dry_basis = 0.2,
             .fuel = plain_fuel(),
             .constants = plain_bed(),
             .width = 0.12},
            model()};
}

Arriving air(double flow) {
    Arriving out;
    out.mass_flow = flow;
    for (std::size_t i = 0; i < species_count; ++i) out.species[i] = flow * dry_air()[i];
    out.gas.mass_fraction = dry_air();
    return out;
}

}  // namespace

TEST_SUITE("models/fire/table_fire") {
    TEST_CASE("a burn-rate table gives off the wood it says, mass and elements closed") {
        const BurnRateFire fire = burn_rate_fire();
        const std::vector<double> fuel{0.3, 0.05};
        const Fire::View view{.time = 300, .fuel = fuel, .solid_temperature = {}};
        const std::vector<Arriving> arrived{air(0.01)};
        const Emission emission = fire.emission(0, view, arrived[0]);
        std::vector<double> rate(2);
        fire.rates(view, arrived, {}, rate, {});
        CHECK(rate[0] == near(0.0005, 1e-12));
        CHECK(fire.pyrolysis(300, fuel) == near(0.0005, 1e-12));

        // What the gas gains the fuel loses: elements by their own books.
        const auto gained = model()->elements(emission.species);
        const double step = 1e-3;
        const std::vector<double> later{fuel[0] + step * rate[0], fuel[1] + step * rate[1]};
        const auto before = fire.elements(fuel), after = fire.elements(later);
        for (std::size_t e = 0; e < gained.size(); ++e)
            CHECK(gained[e] == doctest::Approx((before[e] - after[e]) / step).epsilon(1e-10));
        CHECK(emission.enthalpy_flow ==
              doctest::Approx((fire.enthalpy(fuel) - fire.enthalpy(later)) / step).epsilon(1e-6));
        CHECK(emission.flame.length > 0.05);
    }

    TEST_CASE("char of a table burns within minutes where there is air, and waits where not") {
        const BurnRateFire fire = burn_rate_fire();
        const std::vector<double> fuel{0.3, 0.06};
        const Fire::View view{.time = 1300, .fuel = fuel, .solid_temperature = {}};
        std::vector<double> rate(2);
        const std::vector<Arriving> plenty{air(1.0)}, none{air(0)};
        fire.rates(view, plenty, {}, rate, {});
        CHECK(rate[1] == near(-0.06 / 60, 0.01));  // one minute: our choice in the model
        fire.rates(view, none, {}, rate, {});
        CHECK(rate[1] == 0);
        const std::vector<Arriving> little{air(0.001)};
        fire.rates(view, little, {}, rate, {});
        // Carbon needs 2.66 of oxygen, less a twentieth that leaves as carbon monoxide.
        CHECK(rate[1] > -0.001 * dry_air()[o2] / (2.66 * 0.95) * 1.001);
        CHECK(rate[1] < 0);
    }

    TEST_CASE("what a table's fire has given falls by the wood's heating value") {
        const BurnRateFire fire = burn_rate_fire();
        const std::vector<double> start{0, 0}, end{1, 0};
        CHECK(fire.heating_value(start) - fire.heating_value(end) ==
              near(plain_fuel().wood.higher_heating_value, 1e-12));
        CHECK(fire.dry_wood(start) - fire.dry_wood(end) == 1);
    }

    TEST_CASE("a plain heat source heats the gas and adds nothing to it") {
        const HeatSource source(Table({0, 100}, {0, 5000}));
        const std::vector<double> fuel{0};
        const Fire::View view{.time = 50, .fuel = fuel, .solid_temperature = {}};
        const Emission emission = source.emission(0, view, air(0.01));
        CHECK(emission.enthalpy_flow == near(2500, 1e-12));
        CHECK(sum_of(emission.species) == 0);
        std::vector<double> rate(1);
        source.rates(view, {}, {}, rate, {});
        CHECK(rate[0] == near(2500, 1e-12));
        const std::vector<double> given{2500};
        CHECK(source.enthalpy(fuel) - source.enthalpy(given) == near(2500, 1e-12));
        CHECK(source.heating_value(fuel) - source.heating_value(given) == near(2500, 1e-12));
    }
}

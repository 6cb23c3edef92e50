#include "models/gas/mixture.h"

#include <doctest/doctest.h>

#include <initializer_list>

#include "models/gas/gas_model.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

const GasModel gas(
    {.carbon = 0.42, .hydrogen = 0.075, .oxygen = 0.505, .higher_heating_value = 16e6});

Mixture flue_gas() {
    return gas.mixture({0.70, 0.08, 0.11, 0.08, 0.01, 0.02});
}

}  // namespace

TEST_CASE("temperature undoes enthalpy from the coldest to the hottest, from any guess") {
    for (const Mixture& mixture : {gas.mixture(dry_air()), flue_gas()})
        for (double t : {5.0, 150.0, 199.99, 200.0, 200.01, 298.15, 700.0, 999.999, 1000.0,
                         1000.001, 1200.0, 3499.0, 3501.0, 8000.0})
            for (double guess : {-50.0, 1.0, 300.0, 999.0, 1001.0, 2000.0, 1e5})
                CHECK(mixture.temperature(mixture.enthalpy(t), guess) == near(t, 1e-10));
}

TEST_CASE("an enthalpy no gas can have still has a positive temperature") {
    CHECK(flue_gas().temperature(-1e12, 300) > 0);
    CHECK(flue_gas().temperature(1e9, 300) > 3500);
}

TEST_CASE("enthalpy is continuous and heat capacity is its slope") {
    const Mixture mixture = flue_gas();
    for (double t : {200.0, 1000.0, 3500.0})
        CHECK(mixture.enthalpy(t * (1 + 1e-12)) == near(mixture.enthalpy(t * (1 - 1e-12)), 1e-9));
    for (double t : {100.0, 250.0, 600.0, 950.0, 1500.0, 3000.0, 4000.0}) {
        const double step = 1e-3 * t;  // truncation of the central difference: about 1e-6
        const double slope = (mixture.enthalpy(t + step) - mixture.enthalpy(t - step)) / (2 * step);
        // Below 200 K it rises with the 33rd power: the difference errs by 33 * 34 / 6 * 1e-6.
        CHECK(mixture.heat_capacity(t) == near(slope, t < 200 ? 3e-4 : 1e-5));
    }
}

TEST_CASE("density is the gas law's") {
    const Mixture air = gas.mixture(dry_air());
    CHECK(air.density(300, 101325) * air.gas_constant() * 300 == near(101325, 1e-12));
    CHECK(air.gas_constant() == near(287.05, 5e-4));  // from memory of the standard atmosphere
}

#include "models/gas/transport.h"

#include <doctest/doctest.h>

#include "models/gas/gas_model.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

const GasModel gas(
    {.carbon = 0.42, .hydrogen = 0.075, .oxygen = 0.505, .higher_heating_value = 16e6});

Transport at(const Composition& y, double t) {
    return transport(y, t, gas.mixture(y).heat_capacity(t));
}

}  // namespace

TEST_CASE("air rubs and conducts as the tables say") {
    // Incropera table A.4, from memory: T, viscosity, conductivity. Sutherland reads up to 2.5 %
    // low there and the Eucken relation, built on it, up to 3 % off.
    const double table[][3] = {{300, 184.6e-7, 26.3e-3},
                               {600, 305.8e-7, 46.9e-3},
                               {1000, 424.4e-7, 66.7e-3},
                               {1300, 496.0e-7, 82.0e-3}};
    for (const auto& [t, viscosity, conductivity] : table) {
        CHECK(at(dry_air(), t).viscosity == near(viscosity, 0.03));
        CHECK(at(dry_air(), t).conductivity == near(conductivity, 0.04));
    }
}

TEST_CASE("flue gas rubs and conducts as by Wilke's mixing") {
    // N2 70, CO2 10, H2O 12, O2 8 % by volume; computed from Wilke and modified Eucken; 5 %. Its
    // nitrogen holds no argon: 0.5 % in heat capacity.
    const Composition moles{0.70 * 28.014, 0.08 * 31.998, 0.10 * 44.009, 0.12 * 18.015, 0, 0};
    Composition y = moles;
    const double total = moles[n2] + moles[o2] + moles[co2] + moles[h2o];
    for (double& share : y) share /= total;
    const double table[][4] = {{300, 166.4e-7, 25.6e-3, 1061},
                               {600, 285.4e-7, 47.0e-3, 1139},
                               {1000, 404.2e-7, 73.2e-3, 1255},
                               {1300, 477.3e-7, 90.9e-3, 1316}};
    for (const auto& [t, viscosity, conductivity, heat_capacity] : table) {
        const Transport film = at(y, t);
        CHECK(film.viscosity == near(viscosity, 0.05));
        CHECK(film.conductivity == near(conductivity, 0.05));
        CHECK(gas.mixture(y).heat_capacity(t) == near(heat_capacity, 6e-3));
        CHECK(film.viscosity * heat_capacity / film.conductivity == near(0.69, 0.05));
    }
}

TEST_CASE("a single species keeps its own viscosity") {
    // Sutherland at its reference temperature is the constant itself (White, from memory).
    CHECK(transport({1, 0, 0, 0, 0, 0}, 273, 1040).viscosity == near(1.663e-5, 1e-9));
    CHECK(transport({0, 0, 0, 1, 0, 0}, 350, 1880).viscosity == near(1.12e-5, 1e-9));
    CHECK(transport({0, 0, 0, 0, 1, 0}, 273, 1040).viscosity == near(1.657e-5, 1e-9));
}

#include <doctest/doctest.h>

#include <cmath>

#include "models/fire/fuel_bed.h"
#include "tests/models/fire/bed_bench.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

TEST_SUITE("models/fire/fuel_bed") {
    TEST_CASE("a load that has just gone in keeps the heat it takes from walls and embers") {
        FuelBed::Shape shape = shape_of({sticks()});
        shape.constants.radiant_fraction.value = 0;  // no glow on the walls to take off
        Bed bed(shape);
        bed.fuel = {0, 0.6, 0.05, 0};
        // Embers of 50 g fill two thirds of 0.3 of the view; walls send 20 kW/m2, embers glow at
        // 900 K; the sticks' feet have 0.05 m2.
        const double glow = 0.3 * 2 / 3, from_walls = 0.05 * (1 - glow) * 20e3;
        const double hot = 0.05 * 0.9 * glow * constants::stefan_boltzmann * std::pow(900, 4);
        const double taken = bed.rates()[3];
        CHECK(bed.wall_heat[0] == near(-from_walls, 1e-9));
        CHECK(taken > from_walls);
        CHECK(taken < from_walls + hot);
        // Once it burns as fast as that heat lets it, it keeps no more and the walls pay only for
        // what they send over what it sends back.
        bed.fuel[0] = bed.aim();
        CHECK(bed.rates()[3] == 0);
        CHECK(bed.wall_heat[0] < 0);
        CHECK(bed.wall_heat[0] > -from_walls);
        // Half way it is half the one and half the other.
        const double burning = bed.wall_heat[0];
        bed.fuel[0] /= 2;
        CHECK(bed.rates()[3] == near(taken / 2, 0.05));  // flames and embers pay less than in step
        CHECK(bed.wall_heat[0] == near((burning - from_walls) / 2, 1e-9));
    }

    TEST_CASE("a cold load takes no more from embers than they set free") {
        Bed bed(shape_of({sticks()}));
        for (double& wall : bed.walls) wall = 1;  // as good as no heat
        bed.fuel = {0, 0.6, 0.03, 0};
        for (const double flow : {0.0, 1e-6, 1e-5}) {
            bed.arriving = air(flow);
            const auto rate = bed.rates();
            CHECK(rate[3] >= 0);
            CHECK(rate[3] <= -rate[2] * carbon_heating_value() + 1e-6);  // [W] the walls' part
        }
    }

    TEST_CASE("the warmth of a load leaves with its vapours, in step with its wood") {
        Bed bed(shape_of({sticks()}));
        bed.fuel = {1e-3, 0.3, 0, 6000};  // faster than its heat lets it: none is kept
        const Emission warm = bed.fire.emission(0, bed.view(), bed.arriving);
        const auto rate = bed.rates();
        CHECK(rate[3] / 6000 == near(rate[1] / 0.3, 0.02));  // the last splinters' blur is 1 %
        bed.fuel[3] = 0;
        const Emission plain = bed.fire.emission(0, bed.view(), bed.arriving);
        CHECK(warm.enthalpy_flow - plain.enthalpy_flow == near(-rate[3], 1e-9));
    }

    TEST_CASE("walls heat what wood gives off no further than themselves, however little that is") {
        for (const double rate : {1e-9, 1e-6, 1e-4}) {
            Bed bed(shape_of({sticks()}));
            bed.fuel = {rate, 0.6, 0.1, 0};  // embers, so that there is fire
            bed.arriving = air(0);
            bed.walls = {1300};
            const Emission given = bed.fire.emission(0, bed.view(), bed.arriving);
            double mass = 0;
            Composition gas{};
            for (const double flow : given.species) mass += flow;
            for (std::size_t i = 0; i < species_count; ++i) gas[i] = given.species[i] / mass;
            const Mixture mixture = bed.model->mixture(gas);
            CHECK(mixture.temperature(given.enthalpy_flow / mass, 1000) <= 1300 + 1e-6);
        }
    }

    TEST_CASE("embers heat no wall past the flame's temperature") {
        Bed bed(shape_of({sticks()}));
        bed.fuel = {0, 0, 0.3, 0};
        bed.walls = {900};
        bed.rates();
        CHECK(bed.wall_heat[0] > 0);
        bed.walls = {plain_bed().flame_temperature.value + 1};
        bed.rates();
        CHECK(bed.wall_heat[0] <= 0);
    }
}

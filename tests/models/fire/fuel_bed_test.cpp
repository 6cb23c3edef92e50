#include "models/fire/fuel_bed.h"

#include <doctest/doctest.h>

#include <cmath>

#include "cli/read/read_library.h"
#include "tests/models/fire/bed_bench.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

TEST_SUITE("models/fire/fuel_bed") {
    TEST_CASE("burning wood settles at its rate for the flux it takes") {
        FuelLot dry = sticks();
        dry.moisture_dry_basis = 0;
        Bed bed(shape_of({dry}));
        // 6 g/(m2 s) of lit area at 20 kW/m2 from outside, flame and air not lacking.
        CHECK(bed.aim() == near(0.006 * 0.05, 1e-6));
        bed.walls = {walls_giving(46e3)};
        CHECK(bed.aim() == near(0.006 * 0.05 * (46 + 33.0) / 53, 1e-6));
        bed.fuel[0] = 1e-3;  // from above, it comes down to the same
        CHECK(bed.aim() == near(0.006 * 0.05 * (46 + 33.0) / 53, 1e-6));
        // However hot the walls, no more than 15 g/(m2 s).
        bed.walls = {walls_giving(500e3)};
        CHECK(bed.aim() == near(0.015 * 0.05, 1e-9));
    }

    TEST_CASE(
        "with the constants of the data, pine loses 1.43 times as much at 50 as at 25 "
        "kW/m2") {
        // Ratio of mean heat release in the cone calorimeter (Aalto_Woods data, NIST
        // firemodels/exp), to which the constants were fitted.
        const Library library = read_library();
        FuelLot dry = sticks();
        dry.moisture_dry_basis = 0;
        FuelBed::Shape shape = shape_of({dry});
        shape.constants = library.bed;
        shape.constants.flame_absorption.value = 0;
        Bed bed(shape);
        const double tau = library.bed.response_time.value;
        const auto aim = [&](double flux) {
            bed.walls = {walls_giving(flux)};
            return bed.fuel[0] + tau * bed.rates()[0];
        };
        CHECK(aim(50e3) / aim(25e3) == near(1.43, 0.01));
    }

    TEST_CASE("ash gathers as wood is lost, and lies as deep as its floor is small") {
        FuelLot first = sticks(), second = sticks();
        first.ash = 0.01;
        second.ash = 0.03;
        FuelBed::Shape shape = shape_of({first, second});
        shape.ash_depth = 1;
        shape.first_ash_depth = 0.004;
        shape.ash_floor = 0.02;
        Bed bed(shape);
        bed.fuel = {0.0003, 0.6, 0, 0, 0.0001, 0.3, 0, 0, 0.05};
        CHECK(bed.fire.state_count() == 9);
        const std::vector<double> rate = bed.rates();
        CHECK(rate[8] == near(-0.01 * rate[1] - 0.03 * rate[5], 1e-12));
        CHECK(bed.fire.ash(bed.fuel) == 0.05);
        // 50 g at 500 kg/m3 on 0.02 m2: 5 mm over the 4 that lay there.
        std::vector<double> settings{0, 0};
        bed.fire.set(bed.view(), settings);
        CHECK(settings[1] == near(0.009, 1e-9));
    }

    TEST_CASE("wet wood burns slower, by the heat its water takes") {
        for (const double moisture : {0.15, 0.3, 0.6}) {
            FuelLot dry = sticks(), wet = sticks();
            dry.moisture_dry_basis = 0;
            wet.moisture_dry_basis = moisture;
            Bed a(shape_of({dry})), b(shape_of({wet}));
            CHECK(b.aim() * (1 + moisture * 0.75) == near(a.aim(), 1e-9));
        }
    }

    TEST_CASE("wood without a flame does not burn below the ignition flux, and catches above") {
        Bed bed(shape_of({sticks()}));
        bed.fuel[0] = 0;
        bed.walls = {walls_giving(9e3)};
        CHECK(bed.rates()[0] == 0);
        bed.walls = {walls_giving(15e3)};
        CHECK(bed.rates()[0] > 0);
        // Embers light it under cold walls; so does a hand, for a minute and a half.
        bed.walls = {300};
        CHECK(bed.rates()[0] == 0);
        bed.fuel[2] = 0.03;
        CHECK(bed.rates()[0] > 0);
        FuelLot lit = sticks();
        lit.lit_by_hand = true;
        Bed kindling(shape_of({lit}));
        kindling.fuel[0] = 0;
        kindling.walls = {300};
        kindling.time = 10;
        CHECK(kindling.rates()[0] > 0);
        kindling.time = 91;
        CHECK(kindling.rates()[0] == 0);
    }

    TEST_CASE("a flame that hardly any air reaches feeds its wood less") {
        Bed bed(shape_of({sticks()}));
        const double fed = bed.aim();
        bed.arriving = air(0);
        const double smothered = bed.aim();
        // What the walls give remains: 20 of 53.
        CHECK(smothered == near(fed * 20 / 53, 1e-6));
        bed.arriving = air(0.001);
        CHECK(bed.aim() > smothered);
        CHECK(bed.aim() < fed);
    }

    TEST_CASE("mass, elements and energy go from the fuel to the gas and the walls, none lost") {
        FuelLot lit = sticks();
        lit.lit_by_hand = true;
        FuelBed::Shape shape = shape_of({sticks(), lit});
        shape.constants.flame_absorption.value = 0.8;
        // Three tenths of the view are open.
        shape.sites[0].view = {};
        shape.sites[0].view.add(0, 0.5);
        shape.sites[0].view.add(1, 0.2);
        Bed bed(shape);
        bed.fuel = {0.0003, 0.6, 0.03, 2000, 0.0001, 0.2, 0.08, 500};
        bed.walls = {1100, 900};
        bed.arriving = air(0.006);
        const Emission emission = bed.fire.emission(0, bed.view(), bed.arriving);
        const std::vector<double> rate = bed.rates();
        const double step = 1e-2;  // both books are linear in the states
        std::vector<double> later = bed.fuel;
        for (std::size_t i = 0; i < later.size(); ++i) later[i] += step * rate[i];

        const auto gained = bed.model->elements(emission.species);
        const auto had = bed.fire.elements(bed.fuel), has = bed.fire.elements(later);
        for (std::size_t e = 0; e < gained.size(); ++e)
            CHECK(gained[e] == doctest::Approx((had[e] - has[e]) / step).epsilon(1e-11));
        CHECK(emission.enthalpy_flow + sum_of(bed.wall_heat) ==
              doctest::Approx((bed.fire.enthalpy(bed.fuel) - bed.fire.enthalpy(later)) / step)
                  .epsilon(1e-7));
        // Dry wood lost is char kept and what left, the water besides.
        CHECK(-(rate[1] + rate[5]) == near(bed.fire.pyrolysis(1000, bed.fuel), 1e-12));
        const double water = 0.2 * bed.fire.pyrolysis(1000, bed.fuel);
        double left = 0;
        for (const double flow : emission.species) left += flow;
        CHECK(left == near(-(rate[1] + rate[5] + rate[2] + rate[6]) + water, 1e-9));
    }

    TEST_CASE("the walls that the wood sees pay for the heat it takes, and gain the embers' glow") {
        Bed bed(shape_of({sticks()}));
        bed.walls = {1100};
        bed.rates();
        CHECK(bed.wall_heat[0] < 0);
        bed.walls = {400};
        bed.rates();
        CHECK(bed.wall_heat[0] == 0);
        bed.fuel[2] = 0.1;
        bed.rates();
        CHECK(bed.wall_heat[0] > 0);
    }

    TEST_CASE("lots share the air of their embers by what they hold, and other places do not") {
        FuelBed::Shape shape = shape_of({sticks(), sticks(), sticks()});
        shape.sites.push_back(shape.sites[0]);
        shape.lots[2].site = 1;
        Bed bed(shape);
        bed.fuel = {0, 0, 0.03, 0, 0, 0, 0.09, 0, 0, 0, 0.05, 0};
        const auto rate = bed.rates();
        CHECK(rate[6] == near(3 * rate[2], 1e-9));
        Bed alone(shape_of({sticks()}));
        alone.fuel = {0, 0, 0.05, 0};
        CHECK(rate[10] == near(alone.rates()[2], 1e-9));
    }

    TEST_CASE("wood that does not fit is refused and changes nothing") {
        std::vector<FuelLot> lots(4, sticks());  // 4 x 4000 mm2 into 12 500 mm2
        Bed bed(shape_of(lots));
        bed.fuel.assign(16, 0);
        CHECK(bed.fire.put_in(0, bed.fuel));
        CHECK(bed.fire.put_in(1, bed.fuel));
        const std::vector<double> before = bed.fuel;
        CHECK_FALSE(bed.fire.put_in(2, bed.fuel));
        CHECK(bed.fuel == before);
        // Once a lot has burnt down to its last it fits.
        bed.fuel[1] = 0.01;
        CHECK(bed.fire.put_in(2, bed.fuel));
        CHECK(bed.fuel[9] == 0.6);
    }

    TEST_CASE("the wood in the feed leaves the rest of it free, a tenth at least") {
        Bed bed(shape_of({sticks(), sticks(), sticks()}));
        std::vector<double> settings{-1};
        bed.fuel = {0, 0.6, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
        bed.fire.set(bed.view(), settings);
        CHECK(settings[0] == near(0.0125 - 0.004, 1e-12));
        bed.fuel = {0, 0.6, 0, 0, 0, 0.6, 0, 0, 0, 0.6, 0, 0};
        bed.fire.set(bed.view(), settings);
        CHECK(settings[0] == near(0.00125, 1e-12));
    }

    TEST_CASE("the last splinters burn away and leave nothing below zero") {
        Bed bed(shape_of({sticks()}));
        double last = bed.fire.pyrolysis(1000, bed.fuel);
        for (const double wood : {0.1, 0.01, 1e-3, 1e-5, 0.0}) {
            bed.fuel[1] = wood;
            const double now = bed.fire.pyrolysis(1000, bed.fuel);
            CHECK(now < last);
            last = now;
        }
        CHECK(last == 0);
        bed.fuel = {-1e-6, -1e-9, -1e-9, -1e-3};  // as a step may leave it
        for (const double rate : bed.rates()) CHECK(std::isfinite(rate));
        CHECK(bed.fire.char_left(bed.fuel) == 0);
    }

    TEST_CASE("the slopes given for implicit steps are those of the rates") {
        Bed bed(shape_of({sticks()}));
        for (const double flow : {0.05, 2e-4})
            for (const double wood : {0.5, 0.004}) {
                bed.fuel = {0.0003, wood, 0.08, 900};
                bed.arriving = air(flow);
                std::vector<double> slope(bed.fire.state_count());
                bed.fire.rate_slopes(bed.view(), std::vector<Arriving>{bed.arriving}, slope);
                const std::vector<double> before = bed.rates();
                // With little air the first slope leaves out how a flame starves itself.
                for (std::size_t i = flow > 1e-3 ? 0 : 1; i < 4; ++i) {
                    const double held = bed.fuel[i], step = 1e-4 * held;
                    bed.fuel[i] += step;
                    const double change = bed.rates()[i] - before[i];
                    bed.fuel[i] = held;
                    // A rough slope will do; 5 % is near.
                    CHECK(slope[i] == near(change / step, 0.05));
                }
            }
    }

    TEST_CASE("the heating value of what is left counts wood and embers") {
        Bed bed(shape_of({sticks()}));
        bed.fuel = {0, 0.5, 0.1, 0};
        CHECK(bed.fire.heating_value(bed.fuel) ==
              near(0.5 * 19.8e6 + 0.1 * carbon_heating_value(), 1e-12));
        CHECK(bed.fire.dry_wood(bed.fuel) == 0.5);
        CHECK(bed.fire.char_left(bed.fuel) == 0.1);
    }
}

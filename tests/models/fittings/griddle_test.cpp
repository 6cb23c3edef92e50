#include "models/fittings/griddle.h"

#include <doctest/doctest.h>

#include <cmath>

#include "models/burn.h"
#include "models/cooking_time.h"
#include "models/fittings/on_plate.h"
#include "tests/models/fittings/fitted_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;
using constants::pi;

namespace {

Griddle slab() {
    Griddle griddle;
    griddle.name = "flat";
    griddle.diameter = 0.2;
    griddle.thickness = 0.012;
    griddle.material = "sheet";
    griddle.bottom = "flat";
    return griddle;
}

BurnOutcome burn(const Griddle& griddle, double power) {
    Stove stove = fitted_stove<Griddle>({griddle});
    stove.heat_source = Table(power);
    stove.burn.duration = 2 * 3600;
    return run_burn(stove, plain_library());
}

}  // namespace

TEST_SUITE("models/fittings/griddle") {
    TEST_CASE("its rings are the slab, and together lie on as much of the plate") {
        for (const double off_centre : {0.0, 0.08}) {
            Griddle griddle = slab();
            griddle.off_centre = off_centre;
            const FittedWorkshop shop(fitted_stove<Griddle>({griddle}));
            const double area = pi * 0.01;
            CHECK(shop.mass("griddle.flat") == near(7850 * 0.012 * area, 1e-9));
            double conductance = 0;
            for (const PlateContact& contact : shop.builder.layout.on_plate)
                conductance += contact.conductance;
            // 500 W/(m2 K) across the gap, 6 mm of metal of 50 W/(m K) to the slab's middle. The
            // covered share of a ring is summed in 64 arcs.
            CHECK(conductance == near(area / (1 / 500.0 + 0.006 / 50), 0.01));
            CHECK(sum_of(shop.face("griddle.flat")->area) == near(area + pi * 0.2 * 0.012, 1e-9));
        }
    }

    TEST_CASE("a griddle over the riser fries, hotter in its middle, and the books close") {
        const BurnOutcome outcome = burn(slab(), 20e3);
        CHECK(outcome.summary.energy_residual < 1e-3);
        const auto& told = outcome.summary.fittings;
        REQUIRE(told.size() == 3);
        REQUIRE(told[0].value);
        CHECK(*told[1].value > fry_from);
        CHECK(*told[1].value > *told[2].value);
        CHECK(*told[1].value < *outcome.summary.plate_centre_max);
        // What it takes at the end, when it is all but steady, its top and edge give off: by hand
        // some 10 W/(m2 K) of air and radiation 0.8 sigma (T^4 - T0^4).
        const double t = outcome.results.find("griddle_temperature")->values.back();
        const double loss = (pi * 0.01 + pi * 0.2 * 0.012) *
                            (10 * (t - 293) + 0.8 * 5.67e-8 * (std::pow(t, 4) - std::pow(293, 4)));
        CHECK(outcome.results.find("griddle_heat")->values.back() == near(loss, 0.25));
    }

    TEST_CASE("a thicker slab takes longer to fry, and a feeble fire never gets it there") {
        Griddle thick = slab();
        thick.thickness = 0.03;
        const BurnOutcome thin = burn(slab(), 20e3), slow = burn(thick, 20e3);
        REQUIRE(thin.summary.fittings[0].value);
        REQUIRE(slow.summary.fittings[0].value);
        CHECK(*thin.summary.fittings[0].value < *slow.summary.fittings[0].value);
        CHECK_FALSE(burn(slab(), 2e3).summary.fittings[0].value);
    }

    TEST_CASE("a griddle over the edge, without a plate, or on a pot's place is refused") {
        Griddle far = slab();
        far.off_centre = 0.2;
        CHECK(problems(far, plain_stove()).size() == 1);
        CHECK(problems(slab(), plain_stove()).empty());
        Stove bare = plain_stove();
        bare.plate.reset();
        CHECK(problems(slab(), bare).size() == 1);
        Stove both = fitted_stove<Griddle>({slab()});
        Pot pot;
        pot.name = "stew";
        pot.diameter = 0.1;
        both.fittings.emplace_back(pot);
        CHECK(problems(pot, both).size() == 1);
    }
}

#include "models/fittings/damp.h"

#include <doctest/doctest.h>

#include "models/burn.h"
#include "models/laws/water.h"
#include "models/series.h"
#include "tests/models/fittings/fitted_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Damp damp(const std::string& wall, double water) {
    Damp made;
    made.name = "new";
    made.wall = wall;
    made.water = water;
    return made;
}

/// Three hours, of which the first two have a fire of 8 kW.
BurnOutcome burn(const std::vector<Damp>& walls) {
    Stove stove = fitted_stove<Damp>(walls);
    stove.tunnel->lining = stove.tunnel->roof = {{"brick", 0.03}};
    stove.heat_source = Table({0, 7200, 7201}, {8e3, 8e3, 0});
    stove.burn.duration = 3 * 3600;
    stove.burn.reserve_every = 0;
    return run_burn(stove, plain_library());
}

}  // namespace

TEST_SUITE("models/fittings/damp") {
    TEST_CASE(
        "water stands beside every cell of the wall it is in, by its dry mass, not in metal") {
        FittedWorkshop shop(fitted_stove<Damp>({damp("riser", 0.1)}));
        CHECK(shop.mass("damp.new.riser") > 0);
        double board = 0;
        for (std::size_t i = 0; i < shop.builder.network.solids.size(); ++i)
            if (shop.builder.layout.material[i] == "board")
                board += shop.builder.network.solids[i].mass;
        CHECK(shop.mass("damp.new") == near(0.1 * board, 1e-9));
        CHECK(shop.builder.layout.material.size() == shop.builder.network.solids.size());
    }

    TEST_CASE("drying takes the heat to warm the water and to boil it off, and the books close") {
        const BurnOutcome outcome = burn({damp("riser", 0.05)});
        CHECK(outcome.summary.energy_residual < 1e-3);
        const Series left(outcome.results, "damp_water");
        const double gone = answer(outcome, "driven_off").value();
        CHECK(answer(outcome, "dry_after").has_value());
        CHECK(gone > 0.98 * left[0]);
        const double by_hand = left[0] * (water_heat_capacity * (373.15 - plain_stove().site.room) +
                                          vaporisation_heat);
        // What is left behind has a hundredth of water's heat capacity: some 40 J/(kg K) over up to
        // 500 K, 1 %; the rest is the sampling of a flux that turns on and off.
        CHECK(answer(outcome, "heat").value() == doctest::Approx(by_hand).epsilon(0.03));
    }

    TEST_CASE("while it dries a wall is held back, and what boiled off does not come back") {
        const BurnOutcome dry = burn({}), wet = burn({damp("tunnel", 0.05)});
        const Series cold(wet.results, "tunnel_wall_temperature", 3),
            warm(dry.results, "tunnel_wall_temperature", 3), left(wet.results, "damp_water"),
            heat(wet.results, "damp_heat");
        const std::size_t soon = 600 / 30;
        CHECK(cold[soon] < warm[soon] - 5);
        for (std::size_t i = 1; i < wet.results.time.size(); ++i) {
            CHECK(left[i] <= left[i - 1] + 1e-6);
            CHECK(heat[i] >= 0);
        }
        // Cooling it gives nothing back.
        CHECK(heat[wet.results.time.size() - 1] < 1e-9);
    }

    TEST_CASE("a wall that the stove does not have is refused, with those it has") {
        const Stove stove = plain_stove();
        CHECK(problems(damp("flue.stack", 0.1), stove).empty());
        const auto wrong = problems(damp("flue.bench", 0.1), stove);
        REQUIRE(wrong.size() == 1);
        CHECK(wrong[0].reason.find("flue.level, flue.stack") != std::string::npos);
    }
}

#include "models/cold_start.h"

#include <doctest/doctest.h>

#include <cmath>

#include "models/stove_run.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// The plain stove unlit, its flue in the room, at these temperatures [K].
Stove unlit(double room, double outdoors) {
    Stove stove = plain_stove();
    stove.site.room = room;
    stove.site.outdoor = Table(outdoors);
    return stove;
}

/// Density [kg/m3] of dry air at standard pressure: p M / (R T) with 28.96 g/mol.
double density(double temperature) {
    return 101325 * 0.02896 / (constants::molar_gas * temperature);
}

// Room and outdoors are equally pressed at the tunnel's floor, so the column is that of room air
// up to the flue's top: barrel foot, outlet, stack.
constexpr double column_height = 0.77 - 0.62 + 0.075 + 2.2;  // [m]

// Our air leaves argon out and weighs 0.4 % less; densities differ by as much.
constexpr double of_air = 6e-3;

}  // namespace

TEST_SUITE("models/cold_start") {
    TEST_CASE("gas stands where walls, room and outdoors are alike") {
        for (const double everywhere : {263.15, 283.15, 303.15}) {
            const ColdStart start = cold_start(unlit(everywhere, everywhere), plain_library());
            CHECK(std::abs(start.column) < 0.005);
            CHECK(start.leaning == Leaning::stands);
            CHECK(start.priming == 0);
            CHECK_FALSE(start.kindling);
        }
    }

    TEST_CASE("a warm room under a frosty sky draws by itself, as its column of air weighs less") {
        const ColdStart start = cold_start(unlit(293.15, 273.15), plain_library());
        const double by_hand =
            constants::gravity * column_height * (density(273.15) - density(293.15));
        CHECK(by_hand == near(2.10, 0.01));  // [Pa]
        CHECK(start.column == near(by_hand, of_air));
        CHECK(start.leaning == Leaning::rises);
        CHECK(start.priming == 0);
    }

    TEST_CASE("cold walls on a warm day let the gas fall, and priming has to make up for it") {
        const ColdStart start = cold_start(unlit(288.15, 303.15), plain_library());
        const double by_hand =
            constants::gravity * column_height * (density(303.15) - density(288.15));
        CHECK(start.column == near(by_hand, of_air));
        CHECK(start.leaning == Leaning::falls);
        CHECK(start.priming == -start.column);
    }

    TEST_CASE("kindling goes up from the first match where the gas rises by itself") {
        Stove stove = unlit(293.15, 273.15);
        stove.kindling = Kindling{.mass = 0.1, .kind = "wood"};
        const ColdStart start = cold_start(stove, plain_library());
        REQUIRE(start.kindling);
        CHECK(*start.kindling == 0);
    }

    TEST_CASE("a burn shows of its kindling what kindling alone does") {
        Stove stove = unlit(288.15, 290.15);  // the gas falls before the fire
        stove.kindling = Kindling{.mass = 0.6, .kind = "wood"};
        REQUIRE(kindles_alone(stove));
        StoveRun run(stove, plain_library());
        KindlingWatch watch;
        run.burn(
            600, 30, [](double, std::span<const double>, HeatBalance&) { return true; },
            [&](double time, const Flow& flow) { watch.see(time, flow); });
        const ColdStart alone = cold_start(stove, plain_library());
        const ColdStart seen = cold_start(stove, plain_library(), &watch);
        REQUIRE(alone.kindling);
        REQUIRE(seen.kindling);
        CHECK(*alone.kindling > 0);
        CHECK(*seen.kindling == near(*alone.kindling, 1e-9));
    }

    TEST_CASE("kindling burns alone unless a load or another fire comes soon") {
        Stove stove = unlit(293.15, 273.15);
        CHECK_FALSE(kindles_alone(stove));
        stove.kindling = Kindling{.mass = 0.1, .kind = "wood"};
        CHECK(kindles_alone(stove));
        Load load;
        load.times = {400, 900};
        stove.loads.push_back(load);
        CHECK(kindles_alone(stove));
        stove.loads[0].times = {100, 900};
        CHECK_FALSE(kindles_alone(stove));
        stove.loads.clear();
        stove.heat_source = Table(6000);
        CHECK_FALSE(kindles_alone(stove));
    }

    TEST_CASE("loads and other fires do not count before the stove is lit") {
        Stove stove = unlit(293.15, 273.15);
        const ColdStart bare = cold_start(stove, plain_library());
        stove.heat_source = Table(6000);
        const ColdStart start = cold_start(stove, plain_library());
        CHECK(start.column == bare.column);
        CHECK_FALSE(start.kindling);
    }
}

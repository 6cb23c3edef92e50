#include "models/components/stove_builder.h"

#include <doctest/doctest.h>

#include "models/stove_run.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// Column of gas at rest [Pa] in a cold stove at a time [s].
double column(const Stove& stove, double time) {
    StoveRun run(stove, plain_library());
    const std::vector<double> state = run.built.network.initial_state();
    return run.balance.flow().adverse_pressure(run.balance.conditions(time, state), 0);
}

Stove weathered() {
    Stove stove = plain_stove();
    stove.site.outdoor = Table({0, 3600}, {293.15, 273.15});
    return stove;
}

}  // namespace

TEST_SUITE("models/components/stove_builder") {
    TEST_CASE("a night that cools pulls on the column of a cold stove as its air grows heavier") {
        for (const double time : {0.0, 1800.0, 3600.0, 7200.0}) {
            const BuiltStove built = build_network(weathered(), plain_library());
            const double outdoors = built.outdoor_air(time);
            const double room = built.outdoor_air(0);  // as warm at first
            // 2.425 m from the tunnel's floor, where room and outdoors are equally pressed, up.
            CHECK(column(weathered(), time) ==
                  doctest::Approx(constants::gravity * 2.425 * (outdoors - room)).epsilon(1e-6));
        }
        CHECK(column(weathered(), 3600) > 2);
    }

    TEST_CASE("a stove in steady weather draws as one whose weather has come to that") {
        Stove steady = plain_stove();
        steady.site.outdoor = Table(273.15);
        CHECK(column(weathered(), 3600) == near(column(steady, 0), 1e-9));
        CHECK(column(steady, 3600) == column(steady, 0));
    }

    TEST_CASE("suction in the room and wind at the flue's top come and go in time") {
        Stove stove = plain_stove();
        const double calm = column(stove, 0);
        stove.site.room_suction = Table({0, 600}, {0, 4});
        CHECK(column(stove, 300) == near(calm - 2, 1e-9));
        stove.site.room_suction = Table(0.0);
        stove.site.wind_factor = 0.5;
        stove.site.wind = Table({0, 600}, {0, 4});
        const BuiltStove built = build_network(stove, plain_library());
        // Half of the wind's dynamic pressure pushes in.
        CHECK(column(stove, 300) == near(calm - 0.5 * 0.5 * built.outdoor_air(0) * 2 * 2, 1e-9));
    }

    TEST_CASE("shares left open follow their schedule and never shut tight") {
        Workshop shop;
        const std::size_t share = shop.builder.add_open_share(Steps({0, 60, 120}, {0.7, 0, 0.4}));
        Surroundings around{{}, {}, shop.builder.network.settings};
        const auto at = [&](double time) {
            shop.builder.network.change(time, around);
            return around.settings[share];
        };
        CHECK(shop.builder.network.settings[share] == 0.7);
        CHECK(at(59) == 0.7);
        CHECK(at(60) > 0);
        CHECK(at(60) < 0.05);
        CHECK(at(120) == 0.4);
        CHECK(at(0) == 0.7);
    }
}

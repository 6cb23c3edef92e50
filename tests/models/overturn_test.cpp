#include "models/overturn.h"

#include <doctest/doctest.h>

#include "models/exchange.h"
#include "models/stove_run.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// A riser straight over a fire that burns so much wood [kg/s].
Stove fire_under_riser(double burn_rate) {
    Stove stove = plain_stove();
    stove.tunnel.reset();
    stove.riser.foot = 0.055;
    stove.burn_rate = Table(burn_rate);
    return stove;
}

constexpr double fire = 3e-4;  // [kg/s] of wood, some 5 kW

/// What the fire sets up when so much [kg/s] comes in by the feed; less than nothing: down the
/// riser, but for what the fire adds.
double turned(const Stove& stove, double inlet_flow, double feed_walls = 293.15) {
    StoveRun run(stove, plain_library());
    std::vector<double> state = run.built.network.initial_state(), rate(state.size());
    for (const SolidId id : run.built.layout.feed_wall.solids) {
        const Solid& wall = run.built.network.solids[index(id)];
        state[index(id)] = wall.mass * wall.curve->enthalpy(feed_walls);
    }
    run.balance.rates_at_flow(0, state, inlet_flow, rate);
    const auto law = overturning(run.built);
    REQUIRE(law);
    return law(run.balance.flow().march());
}

}  // namespace

TEST_SUITE("models/overturn") {
    TEST_CASE("a slow cold stream down a riser onto a fire is turned") {
        // Fr = 0.25 in a bore of 125 mm, the flame's gas at a quarter to a fifth of the density.
        const double area = constants::pi / 4 * 0.125 * 0.125;
        const double least = 0.25 * flow_at_unit_froude(1.2, 0.5, area),
                     most = 0.25 * flow_at_unit_froude(1.3, 0.1, area);
        const double flow = turned(fire_under_riser(fire), -2.5e-3);
        CHECK(flow > least);
        CHECK(flow < most);
    }

    TEST_CASE("a fast stream down a riser onto a fire is not turned") {
        CHECK(turned(fire_under_riser(fire), -8e-3) == 0);
        CHECK(turned(fire_under_riser(fire), -20e-3) == 0);
    }

    TEST_CASE("a stream that rises needs no turning") {
        CHECK(turned(fire_under_riser(fire), 2.5e-3) == 0);
    }

    TEST_CASE("a slow cold stream without a fire is not turned") {
        CHECK(turned(fire_under_riser(0), -2.5e-3) == 0);
        CHECK(turned(fire_under_riser(0), -1e-4, 1000) == 0);  // nor by warm bricks alone
    }

    TEST_CASE("where nothing rises from the fire there is nothing to turn") {
        Stove stove = plain_stove();  // the riser stands at the tunnel's other end
        stove.burn_rate = Table(fire);
        const StoveRun run(stove, plain_library());
        CHECK_FALSE(overturning(run.built));
    }
}

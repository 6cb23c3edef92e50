#include <doctest/doctest.h>

#include <cmath>

#include "solver/flow.h"
#include "tests/near.h"
#include "tests/solver/small_network.h"

using namespace drawwell;

namespace {

constexpr double drive = 8;                                          // [Pa] of the flue
constexpr double feed_loss = 1e4, side_loss = 4e4, flue_loss = 2e4;  // [Pa/(kg/s)2]
constexpr JunctionId room{0}, round_side{1};

/// Room - feed - hearth - flue - flue top, and side air to the hearth from a boundary of its own.
Network with_side_air() {
    Network network;
    add_solid(network, "wall", 1, 300);
    add_boundary(network, "room");
    add_boundary(network, "round the side air");
    const JunctionId hearth = add_junction(network, "hearth");
    const JunctionId top = add_boundary(network, "flue top");
    Duct feed, side, flue;
    feed.square = feed_loss;
    side.square = side_loss;
    flue.square = flue_loss;
    flue.gain = [](double) { return drive; };
    add_passage(network, "feed", room, hearth, std::move(feed), true);
    add_passage(network, "side", round_side, hearth, std::move(side), true);
    add_passage(network, "flue", hearth, top, std::move(flue));
    return finish(std::move(network));
}

/// p_adv = 10 (s - s^3), s in units: stands at -1 and at 1, and at 0 until tipped.
constexpr double unit = 0.01;  // [kg/s]
Network two_ways() {
    return single_curve([](double x) {
        const double s = x / unit;
        return 10 * (s - s * s * s);
    });
}

struct Draft {
    explicit Draft(Network made)
        : network(std::move(made)), topology(find_topology(network)), flow(network, topology) {
        temperature.resize(network.solids.size());
        network.temperatures(network.initial_state(), temperature);
    }
    Flow::Conditions conditions() const { return {0, temperature, network.initial_fuel}; }
    Network network;
    Topology topology;
    Flow flow;
    std::vector<double> temperature;
};

}  // namespace

TEST_SUITE("solver/flow against pushes") {
    // Side flows are balanced within 1e-5 Pa, a millionth of these pressures.
    constexpr double balanced = 1e-5;

    TEST_CASE("a gust takes the side air down with the feed's") {
        Draft draft(with_side_air());
        // Both openings lie between room and hearth: the side passes half of the feed's flow.
        for (const double x : {0.0, 0.005, 0.01})
            CHECK(draft.flow.adverse_pressure(draft.conditions(), x) ==
                  near(drive - feed_loss * x * x - flue_loss * 2.25 * x * x, balanced));
    }

    TEST_CASE("suction in the room is made up for by side air from outdoors") {
        Draft draft(with_side_air());
        const auto share = draft.topology.suction_share({room});
        for (const double x : {0.0, 0.005, 0.01}) {
            // Side: -side_loss y^2 = hearth. Flue: hearth + drive = flue_loss (x + y)^2.
            const double a = side_loss + flue_loss, b = 2 * flue_loss * x,
                         c = flue_loss * x * x - drive;
            const double y = (-b + std::sqrt(b * b - 4 * a * c)) / (2 * a);
            const double suction = side_loss * y * y - feed_loss * x * x;
            CHECK(draft.flow.adverse_pressure(draft.conditions(), x, share) ==
                  near(suction, balanced));
        }
    }

    TEST_CASE("suction differs from a gust only where some air comes from outdoors") {
        Draft draft(with_side_air());
        const auto ducted = draft.topology.suction_share({room});
        const auto all_inside = draft.topology.suction_share({room, round_side});
        for (const double x : {0.002, 0.008}) {
            const double gust = draft.flow.adverse_pressure(draft.conditions(), x);
            CHECK(draft.flow.adverse_pressure(draft.conditions(), x, all_inside) ==
                  near(gust, balanced));
            CHECK(draft.flow.adverse_pressure(draft.conditions(), x, ducted) < 0.9 * gust);
        }
    }

    TEST_CASE("the reserve against suction is less where the flue can draw from outdoors") {
        Draft draft(with_side_air());
        draft.flow.solve(draft.conditions());
        const auto share = draft.topology.suction_share({room});
        // At the spill point the side air alone goes up the flue: a gust meets the whole drive,
        // suction the share of it that is lost in the side's opening. The search stops within 1e-3.
        CHECK(draft.flow.reserve(draft.conditions()).pressure == near(drive, 1e-3));
        draft.flow.solve(draft.conditions());
        CHECK(draft.flow.reserve(draft.conditions(), share).pressure ==
              near(drive * side_loss / (side_loss + flue_loss), 1e-3));
    }

    TEST_CASE("a flow that runs back is turned where the draw carries the forward flow on") {
        Draft draft(two_ways());
        draft.flow.begin_from(std::vector{-unit});
        REQUIRE(draft.flow.overturn(draft.conditions(), 0.5 * unit));
        CHECK(draft.flow.committed_flow() == 0.5 * unit);
        draft.flow.solve(draft.conditions());
        CHECK(draft.flow.inlet_flow() == near(unit, 3e-6));  // found within 1e-5 Pa
    }

    TEST_CASE("a flow that runs back is left where the draw would not carry it on") {
        Draft draft(two_ways());
        draft.flow.begin_from(std::vector{-unit});
        CHECK_FALSE(draft.flow.overturn(draft.conditions(), 1.2 * unit));
        CHECK_FALSE(draft.flow.overturn(draft.conditions(), 0));
        CHECK(draft.flow.committed_flow() == -unit);
        draft.flow.solve(draft.conditions());
        CHECK(draft.flow.inlet_flow() == near(-unit, 3e-6));
    }

    TEST_CASE("a flow that runs forward is not turned") {
        Draft draft(two_ways());
        draft.flow.begin_from(std::vector{unit});
        CHECK_FALSE(draft.flow.overturn(draft.conditions(), 0.5 * unit));
        CHECK(draft.flow.committed_flow() == unit);
    }
}

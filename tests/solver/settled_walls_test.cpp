#include "solver/settled_walls.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "tests/near.h"
#include "tests/solver/small_network.h"

using namespace drawwell;
using Vector = std::vector<double>;

namespace {

constexpr double kiln = 900;            // [K] of the gas that enters
constexpr double conductance = 6;       // [W/K] gas to wall
constexpr double room_conductance = 3;  // [W/K] wall to room
constexpr double flow = 0.01;           // [kg/s]

/// Hot gas along a wall that cools in the room, and beside it a wall held at 450 K.
Network between_gas_and_room(double first_temperature) {
    Network network;
    const SolidId wall = add_solid(network, "wall", 2, first_temperature);
    add_solid(network, "held", 2, 450, true);
    add_face(network, "wall", wall, 0.3, room_conductance / 0.3);
    const JunctionId source = add_boundary(network, "kiln");
    network.junctions.back().gas = gas_at(kiln);
    const JunctionId middle = add_junction(network, "middle");
    const JunctionId outdoors = add_boundary(network, "outdoors");
    Duct warm, held;
    warm.rise = 3;
    warm.square = 2e4;
    warm.wall = {0};
    warm.conductance = conductance;
    held.wall = {1};
    held.conductance = 1;
    add_passage(network, "warm", source, middle, std::move(warm), true);
    add_passage(network, "held", middle, outdoors, std::move(held));
    return finish(std::move(network));
}

/// A network with its balance, and the state it was left in.
struct Settled {
    explicit Settled(Network made)
        : network(std::move(made)),
          topology(find_topology(network)),
          balance(network, topology),
          state(network.initial_state()) {}
    double temperature(std::size_t solid) const {
        return state[solid] / network.solids[solid].mass / solid_capacity;
    }
    Network network;
    Topology topology;
    HeatBalance balance;
    Vector state;
};

/// p = 4 + 10 s - 14 s^2 [Pa], s in hundredths of a kg/s: highest 4 + 25/14 at s = 5/14.
double parabola(double x) {
    const double s = x / 0.01;
    return 4 + 10 * s - 14 * s * std::abs(s);
}

}  // namespace

TEST_SUITE("solver/settled_walls") {
    // The search ends where a wall would move by less than 0.2 K more.
    constexpr double rest = 0.2;  // [K]

    TEST_CASE("a wall between gas and room settles where heat in equals heat out") {
        // The gas gives W (1 - exp(-C / W)) (Tgas - Twall), the room takes its conductance times
        // (Twall - 300).
        Settled run(between_gas_and_room(300));
        settle_walls(run.balance, 0, flow, run.state);
        const double stream = flow * gas_capacity;
        const double gas = stream * -std::expm1(-conductance / stream);
        const double by_hand =
            (gas * kiln + room_conductance * air_temperature) / (gas + room_conductance);
        CHECK(std::abs(run.temperature(0) - by_hand) < rest);
        CHECK(by_hand > 600);  // far from where it began and from the gas
    }

    TEST_CASE("walls settle at the same temperature wherever they begin") {
        Settled cold(between_gas_and_room(250)), hot(between_gas_and_room(1500));
        const double push = settle_walls(cold.balance, 0, flow, cold.state);
        CHECK(settle_walls(hot.balance, 0, flow, hot.state) == near(push, 1e-3));  // 0.2 K of 600
        CHECK(std::abs(cold.temperature(0) - hot.temperature(0)) < rest);
    }

    TEST_CASE("many walls settle where none of them gains or loses") {
        Settled run(small_stove());
        settle_walls(run.balance, 0, 0.006, run.state);
        Vector rate(run.state.size());
        run.balance.rates_at_flow(0, run.state, 0.006, rate);
        double outside = 0;
        for (const double heat : run.balance.fluxes().outside) outside += heat;
        for (std::size_t i = 0; i < run.network.solids.size(); ++i)
            CHECK(std::abs(rate[i]) < 1e-3 * outside);
        CHECK(outside > 100);  // [W]
    }

    TEST_CASE("the push returned is what the flow takes at those walls") {
        Settled run(between_gas_and_room(300));
        for (const double x : {0.01, 0.004, -0.004}) {
            const double push = settle_walls(run.balance, 0, x, run.state);
            const Flow::Conditions conditions = run.balance.conditions(0, run.state);
            CHECK(run.balance.flow().adverse_pressure(conditions, x) == near(push, 1e-9));
        }
    }

    TEST_CASE("fuel and held walls stay as they are while other walls settle") {
        Settled stove(small_stove());
        stove.state.back() = 0.7;
        settle_walls(stove.balance, 0, 0.006, stove.state);
        CHECK(stove.state.back() == 0.7);
        Settled wall(between_gas_and_room(300));
        settle_walls(wall.balance, 0, flow, wall.state);
        CHECK(wall.state[1] == wall.network.initial_state()[1]);
    }

    TEST_CASE("where walls do not matter the sustained push is the reserve draw") {
        Settled run(single_curve(parabola));
        Vector rate(run.state.size());
        run.balance.rates(0, run.state, rate);
        const double present = run.balance.flow().inlet_flow();
        const ReserveDraw sustained = sustained_push(run.balance, 0, run.state, present);
        const auto conditions = run.balance.conditions(0, run.state);
        // A parabola is found by three of its points; the reserve's search is good to 1e-3.
        CHECK(sustained.pressure == near(4 + 25.0 / 14, 1e-6));
        CHECK(sustained.pressure == near(run.balance.flow().reserve(conditions).pressure, 1e-3));
        CHECK(sustained.flow == near(0.01 * 5 / 14, 1e-4));
    }

    TEST_CASE("the sustained push is the same wherever its top was expected") {
        Settled run(single_curve(parabola));
        Vector rate(run.state.size());
        run.balance.rates(0, run.state, rate);
        const double present = run.balance.flow().inlet_flow();
        for (const double expected : {0.1, 0.35, 0.5, 0.9, 2.0}) {
            const ReserveDraw sustained =
                sustained_push(run.balance, 0, run.state, present, expected * present);
            CHECK(sustained.pressure == near(4 + 25.0 / 14, 1e-6));
        }
    }

    TEST_CASE("a push that lasts cools the walls and finds less to withstand it") {
        // Walls that nothing heats settle at the temperature of the air and draw no more.
        Network network = small_stove();
        network.fire.reset();
        network.fire_sites.clear();
        network.initial_fuel.clear();
        for (Solid& solid : network.solids) solid.initial_temperature = 600;
        Settled run(std::move(network));
        Vector rate(run.state.size());
        run.balance.rates(0, run.state, rate);
        const double present = run.balance.flow().inlet_flow();
        REQUIRE(present > 0.003);
        CHECK(run.balance.flow().reserve(run.balance.conditions(0, run.state)).pressure > 3);
        const Vector before = run.state;
        CHECK(sustained_push(run.balance, 0, run.state, present).pressure < 0.05);
        CHECK(run.state == before);
    }

    TEST_CASE("a stove that takes in no air sustains no push") {
        Settled run(between_gas_and_room(300));
        for (const double most : {0.0, -0.01}) {
            const ReserveDraw none = sustained_push(run.balance, 0, run.state, most);
            CHECK(none.pressure == 0);
            CHECK(none.flow == 0);
        }
    }
}

#include "solver/flow.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/errors.h"
#include "tests/near.h"
#include "tests/solver/small_network.h"

using namespace drawwell;

namespace {

/// A network with its flow, walls and fuel as at the start.
struct Draft {
    explicit Draft(Network made)
        : network(std::move(made)), topology(find_topology(network)), flow(network, topology) {
        temperature.resize(network.solids.size());
        network.temperatures(network.initial_state(), temperature);
    }
    Flow::Conditions conditions() const { return {0, temperature, network.initial_fuel}; }
    /// Follows a push in steps, as a transient does.
    void follow(double from, double to) {
        for (int i = 0; i <= 40; ++i) {
            flow.solve(conditions(), from + (to - from) * i / 40);
            flow.commit();
        }
    }
    Network network;
    Topology topology;
    Flow flow;
    std::vector<double> temperature;
};

constexpr double unit = 0.01;  // [kg/s]

/// Two stable branches, round +-1 unit, and an unstable one between: p_adv = 10 (s - s^3).
Network two_branches() {
    return single_curve([](double x) {
        const double s = x / unit;
        return 10 * (s - s * s * s);
    });
}
constexpr double fold = 3.849;  // [Pa] 20 / (3 sqrt 3), where a branch of two_branches ends

/// One duct that a held wall of that temperature warms or cools.
Network chimney(double wall) {
    Network network;
    add_solid(network, "wall", 1, wall, true);
    const JunctionId room = add_boundary(network, "room");
    const JunctionId outdoors = add_boundary(network, "outdoors");
    Duct duct;
    duct.rise = 2;
    duct.square = 2e4;
    duct.linear = 50;
    duct.wall = {0};
    duct.conductance = 5;
    add_passage(network, "duct", room, outdoors, std::move(duct), true);
    return finish(std::move(network));
}

}  // namespace

TEST_SUITE("solver/flow") {
    // Flows are found to where the loops balance within 1e-5 Pa: at slopes of some 1000 Pa s/kg
    // that is 1e-8 kg/s, a millionth of these flows.
    constexpr double found = 3e-6;

    TEST_CASE("a warm duct draws upward, a cold one downward") {
        Draft warm(chimney(500)), cold(chimney(260));
        warm.flow.solve(warm.conditions());
        cold.flow.solve(cold.conditions());
        CHECK(warm.flow.inlet_flow() > 0);
        CHECK(cold.flow.inlet_flow() < 0);
    }

    TEST_CASE("where the flow began decides which way it runs") {
        Draft forward(two_branches()), turned(two_branches());
        forward.flow.begin_from(std::vector{0.8 * unit});
        turned.flow.begin_from(std::vector{-0.8 * unit});
        forward.flow.solve(forward.conditions());
        turned.flow.solve(turned.conditions());
        CHECK(forward.flow.inlet_flow() == near(unit, found));
        CHECK(turned.flow.inlet_flow() == near(-unit, found));
    }

    TEST_CASE("a wall as warm as the air draws nothing") {
        Draft still(chimney(air_temperature));
        still.flow.solve(still.conditions());
        CHECK(std::abs(still.flow.inlet_flow()) < 1e-6);
    }

    TEST_CASE("the flow found balances the loop, against a push too") {
        Draft draft(chimney(500));
        for (const double push : {0.0, 2.0, -3.0}) {
            draft.flow.solve(draft.conditions(), push);
            const double x = draft.flow.inlet_flow();
            CHECK(draft.flow.march().imbalance(0) == doctest::Approx(push).epsilon(1e-4));
            CHECK(draft.flow.adverse_pressure(draft.conditions(), x) ==
                  doctest::Approx(push).epsilon(1e-4));
        }
    }

    TEST_CASE("flow grows as the root of the drive where losses are square") {
        double before = 0;
        for (const double drive : {1.0, 4.0, 16.0}) {
            Draft draft(single_curve([=](double x) { return drive - 1e4 * x * std::abs(x); }));
            draft.flow.solve(draft.conditions());
            if (before > 0) CHECK(draft.flow.inlet_flow() == near(2 * before, 1e-5));
            before = draft.flow.inlet_flow();
        }
    }

    TEST_CASE("from rest the flow goes the way it is driven first") {
        for (const double drive : {0.5, -0.5}) {
            Draft draft(single_curve([=](double x) {
                const double s = x / unit;
                return drive + 10 * (s - s * s * s);
            }));
            draft.flow.solve(draft.conditions());
            CHECK(draft.flow.inlet_flow() * drive > 0);
        }
    }

    TEST_CASE("flow follows its branch until that ends, and comes back only where the other ends") {
        Draft draft(two_branches());
        draft.follow(-1, 0);
        CHECK(draft.flow.inlet_flow() == near(unit, found));
        draft.follow(0, 0.95 * fold);
        CHECK(draft.flow.inlet_flow() > 0.57 * unit);  // 1/sqrt(3) at the fold
        draft.follow(0.95 * fold, 1.05 * fold);
        CHECK(draft.flow.inlet_flow() < -unit);
        draft.follow(1.05 * fold, 0);  // the push is gone, the direction stays
        CHECK(draft.flow.inlet_flow() == near(-unit, found));
        draft.follow(0, -0.95 * fold);
        CHECK(draft.flow.inlet_flow() < -0.57 * unit);
        draft.follow(-0.95 * fold, -1.05 * fold);
        CHECK(draft.flow.inlet_flow() > unit);
    }

    TEST_CASE("a state that gives way when pushed is never settled on") {
        // Held at the middle root of two_branches, then tipped by a thousandth of a pascal.
        for (const double tip : {1e-3, -1e-3}) {
            Draft draft(two_branches());
            draft.flow.solve(draft.conditions(), -tip);
            CHECK(draft.flow.inlet_flow() * tip > 0);
            CHECK(std::abs(draft.flow.inlet_flow()) > 0.9 * unit);
        }
    }

    TEST_CASE("from anywhere on a branch every push finds that branch, or the other if it ended") {
        for (const double held : {-2.0, 0.0, 0.5, 0.9, 0.99, 0.9999})
            for (double push = -0.95; push < 1.5; push += 0.05) {
                Draft draft(two_branches());
                draft.follow(-1, held * fold);
                draft.flow.solve(draft.conditions(), push * fold);
                CAPTURE(held);
                CAPTURE(push);
                if (push < 0.999)
                    CHECK(draft.flow.inlet_flow() > unit / std::sqrt(3));
                else if (push > 1.001)
                    CHECK(draft.flow.inlet_flow() < -unit);
            }
    }

    TEST_CASE("a root near by that gives way when pushed is passed over for a stable one") {
        // Held beside s = 0.3 by one curve, then given another whose roots are -1, 0.3 and 1.
        for (const double beside : {0.301, 0.299}) {
            bool second = false;
            Draft draft(single_curve([&second, beside](double x) {
                const double s = x / unit;
                return second ? 10 * (s - 0.3) * (1 - s) * (1 + s) : 10 * (beside - s);
            }));
            draft.follow(0, 0);
            REQUIRE(draft.flow.inlet_flow() == near(beside * unit, 1e-4));
            second = true;
            draft.flow.solve(draft.conditions());
            CHECK(draft.flow.inlet_flow() == near((beside > 0.3 ? 1 : -1) * unit, 1e-5));
        }
    }

    TEST_CASE("leaving a branch counts as a jump until it is committed") {
        Draft draft(two_branches());
        draft.follow(-1, 0.9 * fold);
        draft.flow.solve(draft.conditions(), 0.91 * fold);
        CHECK_FALSE(draft.flow.jumped());
        draft.flow.solve(draft.conditions(), 1.1 * fold);
        CHECK(draft.flow.jumped());
        CHECK(draft.flow.committed_flow() > 0);
        draft.flow.solve(draft.conditions(), 0.9 * fold);  // an attempt that was given up
        CHECK(draft.flow.inlet_flow() > 0);
        draft.flow.solve(draft.conditions(), 1.1 * fold);
        draft.flow.commit();
        CHECK_FALSE(draft.flow.jumped());
        CHECK(draft.flow.committed_flow() < 0);
    }

    TEST_CASE("reserve draw is the top of p_adv on the way down to the spill point") {
        // p = 4 + 10 s - 14 s^2: balanced at s = 1, highest at s = 5/14 with 4 + 25/14 Pa.
        Draft draft(single_curve([](double x) {
            const double s = x / unit;
            return 4 + 10 * s - 14 * s * std::abs(s);
        }));
        draft.flow.solve(draft.conditions());
        CHECK(draft.flow.inlet_flow() == near(unit, found));
        const ReserveDraw reserve = draft.flow.reserve(draft.conditions());
        CHECK(reserve.pressure == near(4 + 25.0 / 14, 1e-3));  // far below what losses are known to
        CHECK(std::abs(reserve.flow - unit * 5 / 14) < 0.05 * unit);  // flat there: looser
    }

    TEST_CASE("where losses only fall with the flow the reserve is the whole draw at the spill") {
        Draft draft(single_curve([](double x) { return 6 - 6e4 * x * std::abs(x); }));
        draft.flow.solve(draft.conditions());
        const ReserveDraw reserve = draft.flow.reserve(draft.conditions());
        CHECK(reserve.pressure == near(6, 1e-3));
        CHECK(std::abs(reserve.flow) < 0.02 * unit);
    }

    TEST_CASE("the reserve is the push at which a slowly raised push turns the flow") {
        Draft draft(two_branches());
        draft.follow(-1, 0);
        const double reserve = draft.flow.reserve(draft.conditions()).pressure;
        CHECK(reserve == near(fold, 1e-3));
        draft.follow(0, 0.999 * reserve);
        CHECK(draft.flow.inlet_flow() > 0);
        draft.follow(0.999 * reserve, 1.001 * reserve);
        CHECK(draft.flow.inlet_flow() < 0);
    }

    TEST_CASE("a flow that runs out of the feed has no reserve") {
        Draft draft(chimney(260));
        draft.flow.solve(draft.conditions());
        CHECK(draft.flow.reserve(draft.conditions()).pressure == 0);
    }

    TEST_CASE("two inlets share the air as their losses say") {
        Network network;
        add_solid(network, "wall", 1, 300);
        const JunctionId room = add_boundary(network, "room");
        const JunctionId slot = add_boundary(network, "slot");
        const JunctionId hearth = add_junction(network, "hearth");
        const JunctionId outdoors = add_boundary(network, "outdoors");
        Duct feed, side, flue;
        feed.square = 1e4;
        side.square = 9e4;  // a third of the flow at the same loss
        flue.square = 2e4;
        flue.gain = [](double) { return 8.0; };
        add_passage(network, "feed", room, hearth, std::move(feed), true);
        add_passage(network, "side", slot, hearth, std::move(side), true);
        add_passage(network, "flue", hearth, outdoors, std::move(flue));
        Draft draft(finish(std::move(network)));
        draft.flow.solve(draft.conditions());
        // 1e4 x^2 + 2e4 (4 x / 3)^2 = 8.
        const double x = std::sqrt(8 / (1e4 + 2e4 * 16 / 9));
        CHECK(draft.flow.inlet_flow(0) == near(x, 1e-5));
        CHECK(draft.flow.inlet_flow(1) == near(x / 3, 1e-5));
    }

    TEST_CASE("a fan in a way back turns the gas in a circle") {
        Network network;
        add_solid(network, "wall", 1, 300);
        const JunctionId room = add_boundary(network, "room");
        const JunctionId hearth = add_junction(network, "hearth");
        const JunctionId top = add_junction(network, "top");
        const JunctionId outdoors = add_boundary(network, "flue top");
        Duct feed, riser, back, flue;
        feed.square = flue.square = 1e4;
        riser.square = back.square = 5e3;
        back.gain = [](double) { return 6.0; };
        flue.gain = [](double) { return 2.0; };
        add_passage(network, "feed", room, hearth, std::move(feed), true);
        add_passage(network, "riser", hearth, top, std::move(riser));
        add_passage(network, "back", top, hearth, std::move(back), true);
        add_passage(network, "flue", top, outdoors, std::move(flue));
        Draft draft(finish(std::move(network)));
        draft.flow.solve(draft.conditions());
        const double x = draft.flow.inlet_flow(0), y = draft.flow.inlet_flow(1);
        CHECK(6 - 5e3 * y * y == doctest::Approx(5e3 * (x + y) * (x + y)).epsilon(1e-4));
        CHECK(2 - 2e4 * x * std::abs(x) == doctest::Approx(5e3 * (x + y) * (x + y)).epsilon(1e-4));
    }

    TEST_CASE("a fire's gas is in the flow that leaves") {
        Draft draft(small_stove());
        draft.flow.solve(draft.conditions());
        const March& march = draft.flow.march();
        CHECK(march.mass_flow(2) - march.mass_flow(0) == doctest::Approx(2e-4).epsilon(1e-4));
        CHECK(draft.flow.inlet_flow() > 0);
    }

    TEST_CASE("loops are balanced as closely as asked") {
        for (const double within : {1e-2, 1e-4, 1e-6}) {
            Draft draft(chimney(500));
            draft.flow.balance_within(within);
            draft.flow.solve(draft.conditions());
            draft.flow.commit();
            draft.flow.solve(draft.conditions(), -0.5);
            CHECK(std::abs(draft.flow.march().imbalance(0) + 0.5) < within);
        }
    }

    TEST_CASE("a flow that changed at once is not taken for one that goes on changing") {
        Draft draft(chimney(500));
        draft.flow.solve(draft.conditions());
        draft.flow.commit();
        const auto at = [&](double time) {
            return Flow::Conditions{time, draft.temperature, draft.network.initial_fuel};
        };
        draft.flow.solve(at(1 - 1e-13));
        draft.flow.commit();
        draft.flow.solve(at(1), -0.5);  // a stop: the same instant, another push
        draft.flow.commit();
        const std::size_t before = draft.flow.marches();
        draft.flow.solve(at(1.2), -0.5);
        CHECK(draft.flow.marches() - before <= 2);
    }

    TEST_CASE("a flow that bends evenly is foreseen after three steps") {
        // Walls that warm as time squared; the draw follows their temperature.
        Draft draft(chimney(500));
        std::size_t last = 0;
        std::vector<double> walls = draft.temperature;
        for (const double time : {0.0, 10.0, 20.0, 30.0, 40.0}) {
            for (double& wall : walls) wall += 2e-3 * time;
            const std::size_t before = draft.flow.marches();
            draft.flow.solve({time, walls, draft.network.initial_fuel});
            draft.flow.commit();
            last = draft.flow.marches() - before;
        }
        CHECK(last == 1);
    }

    TEST_CASE("a draw that no stable flow balances is said to be so") {
        // The one root, at -5 g/s, gives way when pushed.
        Draft draft(single_curve([](double x) { return 5 + 1e3 * x; }));
        CHECK_THROWS_AS(draft.flow.solve(draft.conditions()), SolverError);
    }
}

#include "solver/march.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/near.h"
#include "tests/solver/small_network.h"

using namespace drawwell;

namespace {

/// Room - feed - hearth - riser - top - flue - outdoors, with a way back from top to hearth. The
/// riser touches one wall held at 600 K.
Network with_way_back(double conductance) {
    Network network;
    add_solid(network, "wall", 1, 600, true);
    const JunctionId room = add_boundary(network, "room");
    const JunctionId hearth = add_junction(network, "hearth");
    const JunctionId top = add_junction(network, "top");
    const JunctionId outdoors = add_boundary(network, "flue top");
    Duct riser;
    riser.wall = {0};
    riser.conductance = conductance;
    add_passage(network, "feed", room, hearth, {}, true);
    add_passage(network, "riser", hearth, top, std::move(riser));
    add_passage(network, "back", top, hearth, {}, true);
    add_passage(network, "flue", top, outdoors, {});
    return finish(std::move(network));
}

constexpr JunctionId hearth{1}, top{2};

/// A network, its topology and walls, marched at given inlet flows.
struct Marched {
    Marched(Network made, const std::vector<double>& inlet, const std::vector<double>& emission)
        : network(std::move(made)), topology(find_topology(network)), march(network, topology) {
        temperature.resize(network.solids.size());
        network.temperatures(network.initial_state(), temperature);
        march.begin({0, temperature, network.initial_fuel}, inlet, emission);
        march.complete();
    }
    Network network;
    Topology topology;
    March march;
    std::vector<double> temperature;
};

}  // namespace

TEST_SUITE("solver/march") {
    TEST_CASE("gas warms along a held wall as effectiveness and transfer units say") {
        const Marched run(with_way_back(3), {0.01, 0}, {});
        CHECK(temperature_of(run.march.junction_gas(top)) ==
              near(600 - 300 * std::exp(-3 / (0.01 * gas_capacity)), 1e-9));
        CHECK(run.march.mass_flow(3) == near(0.01, 1e-12));
    }

    TEST_CASE("gas that runs in a circle is mixed until it stands still") {
        // Hearth: feed at 300 K with three times as much from the top. Closed form of the round.
        const double feed = 0.01, back = 0.03;
        const Marched run(with_way_back(8), {feed, back}, {});
        const double pass = std::exp(-8 / ((feed + back) * gas_capacity));
        const double share = back / (feed + back);
        const double at_hearth =
            ((1 - share) * 300 + share * (1 - pass) * 600) / (1 - share * pass);
        const double at_top = 600 - (600 - at_hearth) * pass;
        // The round stops where it moves less than 1 J/kg in a thousand; what is left is of a
        // geometric series.
        CHECK(temperature_of(run.march.junction_gas(hearth)) == near(at_hearth, 1e-7));
        CHECK(temperature_of(run.march.junction_gas(top)) == near(at_top, 1e-7));
    }

    TEST_CASE("a circle that turns the other way is marched the other way") {
        // Against its drawing the way back takes hearth gas round the riser to the top.
        const double feed = 0.02, back = -0.005;
        const Marched run(with_way_back(8), {feed, back}, {});
        CHECK(run.march.mass_flow(1) == near(0.015, 1e-12));
        const double pass = std::exp(-8 / (0.015 * gas_capacity));
        const double riser_out = 600 - 300 * pass;
        CHECK(temperature_of(run.march.junction_gas(hearth)) == near(300, 1e-9));
        CHECK(temperature_of(run.march.junction_gas(top)) ==
              near((0.015 * riser_out + 0.005 * 300) / 0.02, 1e-9));
    }

    TEST_CASE("reversed gas comes in by the flue and leaves by the feed, warmed on the way") {
        const Marched run(with_way_back(3), {-0.01, 0}, {});
        CHECK(run.march.crossing(1).outlet.enthalpy / gas_capacity ==
              near(600 - 300 * std::exp(-0.3), 1e-9));
        CHECK(temperature_of(run.march.crossing(0).outlet) ==
              near(600 - 300 * std::exp(-0.3), 1e-9));
        CHECK(run.march.order().front() == 3);
    }

    TEST_CASE("passages are worked out upstream first") {
        const Marched run(small_stove(), {0.01}, {2e-4});
        CHECK(run.march.order() == std::vector<std::size_t>{0, 1, 2});
    }

    TEST_CASE("a fire adds its gas and its heat to what arrives") {
        const Marched run(small_stove(), {0.01}, {2e-4});
        CHECK(run.march.emitted(0) == near(2e-4, 1e-12));
        CHECK(run.march.arrived()[0].mass_flow == near(0.01, 1e-12));
        CHECK(run.march.junction_gas(JunctionId{1}).enthalpy ==
              near((0.01 * gas_capacity * 300 + 2e-4 * 2e7) / 0.0102, 1e-9));
        CHECK(run.march.mass_flow(2) == near(0.0102, 1e-12));
    }

    TEST_CASE("a fire's gas swells the flow that goes on, whatever was guessed of it") {
        for (const double guess : {0.0, 2e-4, 5e-3}) {
            const Marched run(small_stove(), {0.01}, {guess});
            CHECK(run.march.mass_flow(2) == near(0.0102, 1e-12));
            CHECK(run.march.unsettled() < 1e-15);
        }
    }

    TEST_CASE("where gas flows back to a fire the guess stays in its flows, and is told apart") {
        const Marched run(small_stove(), {-0.01}, {5e-4});
        CHECK(run.march.mass_flow(2) == near(-0.0095, 1e-12));
        CHECK(run.march.unsettled() == near(3e-4, 1e-12));
    }

    TEST_CASE("a junction without flow holds still air, not nonsense") {
        const Marched run(with_way_back(3), {0, 0}, {});
        CHECK(temperature_of(run.march.junction_gas(hearth)) == near(300, 1e-9));
        CHECK(std::isfinite(run.march.crossing(1).buoyancy));
    }

    TEST_CASE("a loop's imbalance is what drives it over what it loses") {
        Network network;
        add_solid(network, "wall", 1, 300);
        const JunctionId room = add_boundary(network, "room", -1);
        const JunctionId middle = add_junction(network, "middle");
        const JunctionId outdoors = add_boundary(network, "outdoors", 2);
        Duct feed, flue;
        feed.square = 1e4;
        flue.linear = 100;
        flue.gain = [](double) { return 7.0; };
        add_passage(network, "feed", room, middle, std::move(feed), true);
        add_passage(network, "flue", middle, outdoors, std::move(flue));
        Marched run(finish(std::move(network)), {0.01}, {});
        CHECK(run.march.imbalance(0) == near(7 - 3 - 1e4 * 1e-4 - 100 * 0.01, 1e-12));
    }

    TEST_CASE("what stands round the network is what it has changed to at that time") {
        // A fan whose pressure is a setting, room air that warms, a boundary whose pressure falls.
        struct Fan final : PassageLaw {
            std::size_t cell_count() const override { return 1; }
            const std::vector<Touch>& touches() const override { return touches_; }
            Crossing cross(const PassageInput& input, PassageRecord record) const override {
                record.cells[0] = {};
                Crossing crossing;
                crossing.outlet = input.gas;
                crossing.buoyancy = input.settings[0];
                return crossing;
            }
            std::vector<Touch> touches_;
        };
        Network network;
        add_solid(network, "wall", 1, 300);
        const JunctionId room = add_boundary(network, "room", 1);
        const JunctionId middle = add_junction(network, "middle");
        const JunctionId outdoors = add_boundary(network, "outdoors", 0.5);
        add_passage(network, "feed", room, middle, {}, true);
        add_passage(network, "fan", middle, outdoors, {});
        network.passages[1].law = std::make_unique<Fan>();
        network.settings = {4};
        network.change = [](double time, Surroundings& around) {
            around.pressure[2] = 0.5 - time / 100;
            around.gas[0] = gas_at(300 + time / 10);
            around.settings[0] = 4 + time / 50;
        };
        Marched run(finish(std::move(network)), {0.01}, {});
        CHECK(run.march.imbalance(0) == near(1 + 4 - 0.5, 1e-12));
        for (const double time : {200.0, 50.0, 0.0}) {  // forward and back: it depends on no other
            run.march.begin({time, run.temperature, {}}, std::vector{0.01}, {});
            CHECK(run.march.imbalance(0) == near(1 + (4 + time / 50) - (0.5 - time / 100), 1e-12));
            run.march.complete();
            CHECK(temperature_of(run.march.junction_gas(middle)) == near(300 + time / 10, 1e-9));
        }
    }
}

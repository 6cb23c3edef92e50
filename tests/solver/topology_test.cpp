#include "solver/topology.h"

#include <doctest/doctest.h>

#include "solver/errors.h"
#include "tests/solver/small_network.h"

using namespace drawwell;
using Row = std::vector<double>;

namespace {

/// Feed and side air to a hearth, riser and flue from there.
Network with_side_air() {
    Network network;
    add_solid(network, "wall", 1, 300);
    const JunctionId room = add_boundary(network, "room at the feed", 0.5);
    const JunctionId slot = add_boundary(network, "room at the slot", 0.2);
    const JunctionId hearth = add_junction(network, "hearth");
    const JunctionId top = add_junction(network, "riser top");
    const JunctionId outdoors = add_boundary(network, "flue top", -1);
    add_passage(network, "feed", room, hearth, {}, true);
    add_passage(network, "side", slot, hearth, {}, true);
    add_passage(network, "riser", hearth, top, {});
    add_passage(network, "flue", top, outdoors, {});
    network.fire = std::make_unique<NitrogenFire>([](double) { return 0.0; }, 0.0);
    network.fire_sites = {hearth};
    network.initial_fuel = {1};
    return finish(std::move(network));
}

/// The boundaries of a loop in words: `+0 -4` comes in at junction 0 and goes out at 4.
std::string ends(const Topology& topology, std::size_t loop) {
    std::string text;
    for (const Topology::End& end : topology.loop_ends[loop])
        text += (text.empty() ? "" : " ") + std::string(end.share > 0 ? "+" : "-") +
                std::to_string(end.junction);
    return text;
}

}  // namespace

TEST_SUITE("solver/topology") {
    TEST_CASE("each inlet's flow is an unknown, and what follows it adds them up") {
        const Network network = with_side_air();
        const Topology topology = find_topology(network);
        CHECK(topology.loop_count == 2);
        CHECK(topology.inlets == std::vector<std::size_t>{0, 1});
        CHECK(topology.by_inlet[0] == Row{1, 0});
        CHECK(topology.by_inlet[1] == Row{0, 1});
        CHECK(topology.by_inlet[2] == Row{1, 1});
        CHECK(topology.by_inlet[3] == Row{1, 1});
    }

    TEST_CASE("what a fire gives off leaves by the flue") {
        const Topology topology = find_topology(with_side_air());
        CHECK(topology.by_site[0] == Row{0});
        CHECK(topology.by_site[1] == Row{0});
        CHECK(topology.by_site[2] == Row{1});
        CHECK(topology.by_site[3] == Row{1});
    }

    TEST_CASE(
        "the first loop runs from the room to the flue's top, but later ones avoid the flue") {
        const Topology topology = find_topology(with_side_air());
        CHECK(topology.loop[0] == Row{1, 0, 1, 1});
        CHECK(topology.loop[1] == Row{-1, 1, 0, 0});
        CHECK(ends(topology, 0) == "+0 -4");
        CHECK(ends(topology, 1) == "-0 +1");
    }

    TEST_CASE(
        "a gust at the flue's top and suction in the room are the same to a stove that takes "
        "all its air from the room") {
        const Topology topology = find_topology(with_side_air());
        CHECK(topology.gust_share == Row{1, 0});
        CHECK(topology.suction_share({JunctionId{0}, JunctionId{1}}) == Row{1, 0});
    }

    TEST_CASE("with ducted side air a fan in the room works against the feed alone") {
        const Topology topology = find_topology(with_side_air());
        CHECK(topology.suction_share({JunctionId{0}}) == Row{1, -1});
    }

    TEST_CASE("a duct drawn against the gas is counted with its sign") {
        Network network;
        add_solid(network, "wall", 1, 300);
        const JunctionId room = add_boundary(network, "room");
        const JunctionId hearth = add_junction(network, "hearth");
        const JunctionId outdoors = add_boundary(network, "flue top", 2);
        add_passage(network, "feed", room, hearth, {}, true);
        add_passage(network, "flue, from its top", outdoors, hearth, {});
        const Topology topology = find_topology(finish(std::move(network)));
        CHECK(topology.by_inlet[1] == Row{-1});
        CHECK(topology.loop[0] == Row{1, -1});
        CHECK(ends(topology, 0) == "+0 -2");
    }

    TEST_CASE("a way back makes a loop of its own that leaves the flue out") {
        Network network;
        add_solid(network, "wall", 1, 300);
        const JunctionId room = add_boundary(network, "room");
        const JunctionId hearth = add_junction(network, "hearth");
        const JunctionId top = add_junction(network, "top");
        const JunctionId outdoors = add_boundary(network, "flue top");
        add_passage(network, "feed", room, hearth, {}, true);
        add_passage(network, "riser", hearth, top, {});
        add_passage(network, "back", top, hearth, {}, true);
        add_passage(network, "flue", top, outdoors, {});
        const Topology topology = find_topology(finish(std::move(network)));
        CHECK(topology.loop_count == 2);
        CHECK(topology.loop[1] == Row{0, 1, 1, 0});
        CHECK(topology.by_inlet[1] == Row{1, 1});
        CHECK(topology.by_inlet[3] == Row{1, 0});
    }

    TEST_CASE("a part that gas cannot leave is refused by name") {
        Network network;
        add_solid(network, "wall", 1, 300);
        const JunctionId room = add_boundary(network, "room");
        const JunctionId hearth = add_junction(network, "hearth");
        const JunctionId bell = add_junction(network, "bell");
        const JunctionId outdoors = add_boundary(network, "flue top");
        add_passage(network, "feed", room, hearth, {}, true);
        add_passage(network, "flue", hearth, outdoors, {});
        add_passage(network, "into the bell", hearth, bell, {}, true);
        add_passage(network, "out of the bell", bell, hearth, {}, true);
        const Network whole = finish(std::move(network));
        CHECK_THROWS_WITH_AS(find_topology(whole), "bell: gas cannot leave from here", InputError);
    }

    TEST_CASE("a stove that nothing lets air into is refused") {
        Network network;
        add_solid(network, "wall", 1, 300);
        const JunctionId room = add_boundary(network, "room");
        const JunctionId outdoors = add_boundary(network, "flue top");
        add_passage(network, "duct", room, outdoors, {});
        const Network whole = finish(std::move(network));
        CHECK_THROWS_AS(find_topology(whole), InputError);
    }
}

#include "solver/network.h"

#include <doctest/doctest.h>

#include "solver/errors.h"
#include "tests/near.h"
#include "tests/solver/small_network.h"

using namespace drawwell;

namespace {

/// A passage along two walls, complete but for `finish`.
Network unfinished() {
    Network network;
    add_solid(network, "near", 2, 400);
    add_solid(network, "far", 3, 500, true);
    const JunctionId room = add_boundary(network, "room");
    const JunctionId hearth = add_junction(network, "hearth");
    const JunctionId outdoors = add_boundary(network, "outdoors");
    add_passage(network, "feed", room, hearth, {}, true);
    Duct duct;
    duct.wall = {0, 1, 0};
    add_passage(network, "duct", hearth, outdoors, std::move(duct));
    return network;
}

}  // namespace

TEST_SUITE("solver/network") {
    TEST_CASE("finishing numbers gas cells and touches one after the other") {
        const Network network = finish(unfinished());
        CHECK(network.gas_cell_count == 4);
        CHECK(network.touch_count == 3);
        CHECK(network.passages[1].first_cell == 1);
        CHECK(network.passages[1].first_touch == 0);
    }

    TEST_CASE("the first state holds each solid's enthalpy, and temperatures come back from it") {
        Network network = finish(unfinished());
        network.initial_fuel = {7};
        const auto state = network.initial_state();
        REQUIRE(state.size() == 3);
        CHECK(state[0] == near(2 * solid_capacity * 400, 1e-12));
        CHECK(state[2] == 7);
        std::vector<double> temperature(2);
        network.temperatures(state, temperature);
        CHECK(temperature[0] == near(400, 1e-12));
        CHECK(temperature[1] == near(500, 1e-12));
    }

    TEST_CASE("a held solid keeps its temperature whatever its state says") {
        const Network network = finish(unfinished());
        auto state = network.initial_state();
        state[0] *= 1.1;
        state[1] *= 1.1;
        std::vector<double> temperature(2);
        network.temperatures(state, temperature);
        CHECK(temperature[0] == near(440, 1e-12));
        CHECK(temperature[1] == 500);
    }

    TEST_CASE("a part that is not whole is refused by name") {
        const auto refused = [](const char* message, auto damage) {
            Network network = unfinished();
            damage(network);
            CHECK_THROWS_WITH_AS(finish(std::move(network)), message, InputError);
        };
        refused("near: needs a positive mass", [](Network& n) { n.solids[0].mass = 0; });
        refused("near: has no material", [](Network& n) { n.solids[0].curve = nullptr; });
        refused("far: needs a positive temperature",
                [](Network& n) { n.solids[1].initial_temperature = 0; });
        refused("conduction: joins solids that do not exist",
                [](Network& n) { n.links.push_back({.a = SolidId{0}, .b = SolidId{2}}); });
        refused("conduction: joins solids that do not exist",
                [](Network& n) { n.links.push_back({.a = SolidId{1}, .b = SolidId{1}}); });
        refused("face: needs a law, and an area for each solid", [](Network& n) {
            add_face(n, "face", SolidId{0}, 1, 1);
            n.outside[0].area.clear();
        });
        refused("face: faces no solid", [](Network& n) { add_face(n, "face", SolidId{9}, 1, 1); });
        refused("round: needs an exchange area for each pair of patches", [](Network& n) {
            RadiationEnclosure enclosure;
            enclosure.name = "round";
            enclosure.patches.resize(2);
            enclosure.exchange_area.resize(3);
            n.enclosures.push_back(enclosure);
        });
        refused("fire: needs a junction for each of its sites", [](Network& n) {
            n.fire = std::make_unique<NitrogenFire>([](double) { return 0.0; }, 0.0);
        });
        refused("duct: has no law", [](Network& n) { n.passages[1].law = nullptr; });
        refused("duct: does not join two junctions",
                [](Network& n) { n.passages[1].to = n.passages[1].from; });
        refused("duct: touches a wall that does not exist",
                [](Network& n) { n.solids.pop_back(); });
        refused("hearth: is a dead end of the gas path", [](Network& n) { n.passages.pop_back(); });
    }
}

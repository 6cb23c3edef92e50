#include "models/build_network.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "models/laws/enclosure.h"
#include "solver/errors.h"
#include "solver/heat_balance.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Stove with_loads() {
    Stove stove = plain_stove();
    Load first;
    first.name = "first";
    first.times = {480};
    first.kind = "wood";
    first.pieces = 3;
    first.side = 0.03;
    first.length = 0.3;
    first.moisture_wet_basis = 0.2;
    first.mass = 0.5;
    Load main = first;
    main.name = "main";
    main.times = {1000, 300};
    main.mass = 0.8;
    stove.loads = {first, main};
    stove.kindling = Kindling{.mass = 0.2, .kind = "wood"};
    return stove;
}

/// Shares of the heat set free in tunnel and riser, and the air [kg/s], of a stove whose firebox
/// is at 900 K and all else at 400 K, so many grams of dry wood a second burning.
struct Shares {
    Shares(double grams, double port_width) {
        Stove stove = plain_stove();
        stove.burn_rate = Table(grams / 1000 / (1 - 0.16) / (1 - 0.005));
        stove.port->width = port_width;
        const BuiltStove built = build_network(stove, plain_library());
        const Topology topology = find_topology(built.network);
        HeatBalance balance(built.network, topology);
        std::vector<double> state(built.network.state_count()), rate(state.size());
        for (std::size_t i = 0; i < built.network.solids.size(); ++i) {
            const Solid& solid = built.network.solids[i];
            const bool firebox =
                solid.name.starts_with("tunnel") || solid.name.starts_with("riser");
            state[i] = solid.mass * solid.curve->enthalpy(firebox ? 900 : 400);
        }
        balance.rates(0, state, rate);
        const March& march = balance.flow().march();
        air = march.mass_flow(*built.layout.feed);
        double all = 0;
        for (const GasCell& cell : march.cells()) all += cell.burnt;
        const auto part = [&](std::size_t p) {
            const Passage& passage = built.network.passages[p];
            double sum = 0;
            for (std::size_t i = 0; i < passage.law->cell_count(); ++i)
                sum += march.cells()[passage.first_cell + i].burnt;
            return sum / all;
        };
        tunnel = part(*built.layout.tunnel);
        riser = part(*built.layout.riser);
    }
    double tunnel = 0, riser = 0, air = 0;
};

}  // namespace

TEST_SUITE("models/build_network") {
    TEST_CASE("a stove becomes a whole network: every part has mass, every touch a wall") {
        for (const bool tunnel : {true, false})
            for (const bool barrel : {true, false})
                for (const bool feed : {true, false}) {
                    Stove stove = with_loads();
                    if (!tunnel) stove.tunnel.reset();
                    if (!barrel) {
                        stove.barrel.reset();
                        stove.plate.reset();
                    }
                    if (!feed) stove.feed.reset();
                    const BuiltStove built = build_network(stove, plain_library());
                    for (const Solid& solid : built.network.solids) {
                        CAPTURE(solid.name);
                        CHECK(solid.mass > 0);
                    }
                    for (const Passage& passage : built.network.passages)
                        for (const Touch& touch : passage.law->touches())
                            CHECK(touch.solid < built.network.solids.size());
                    CHECK(find_topology(built.network).inlets.size() == 1);
                    CHECK(built.layout.tunnel.has_value() == tunnel);
                    CHECK(built.layout.annulus.has_value() == barrel);
                    for (const double fuel : built.network.initial_fuel) CHECK(fuel == 0);
                }
    }

    TEST_CASE("no two solids share a name") {
        const BuiltStove built = build_network(with_loads(), plain_library());
        std::vector<std::string> names;
        for (const Solid& solid : built.network.solids) names.push_back(solid.name);
        std::sort(names.begin(), names.end());
        CHECK(std::adjacent_find(names.begin(), names.end()) == names.end());
    }

    TEST_CASE("each time of a load is a lot, dry and free of ash, in order of time") {
        const BuiltStove built = build_network(with_loads(), plain_library());
        REQUIRE(built.bed != nullptr);
        const auto& lots = built.bed->lots();
        REQUIRE(lots.size() == 4);
        REQUIRE(built.load_times.size() == 4);
        CHECK(built.load_times[0].time == 0);
        CHECK(lots[built.load_times[0].lot].name == "kindling");
        CHECK(lots[built.load_times[0].lot].lit_by_hand);
        CHECK(built.load_times[1].time == 300);
        CHECK(lots[built.load_times[1].lot].name == "main");
        CHECK(built.load_times[2].time == 480);
        CHECK(built.load_times[3].time == 1000);
        const FuelLot& first = lots[built.load_times[2].lot];
        CHECK(first.dry_mass == near(0.5 * 0.8 * 0.995, 1e-12));
        CHECK(first.dry_mass * first.moisture_dry_basis == near(0.5 * 0.2, 1e-12));
        CHECK(first.lit_area == near(3 * 4 * 0.03 * 0.11, 1e-12));  // below the tunnel's roof
        CHECK(first.section == near(3 * 0.03 * 0.03, 1e-12));
        CHECK(first.foot_share == near(0.11 / 0.3, 1e-12));
        CHECK(first.ash * first.dry_mass == near(0.5 * 0.8 * 0.005, 1e-12));
        // Kindling burns on every side: four times its volume over the thickness of a piece.
        const FuelLot& kindling = lots[built.load_times[0].lot];
        CHECK(kindling.lit_area == near(4 * 0.2 / 690 / 0.012, 1e-12));
    }

    TEST_CASE("a bundle is lit on its outside alone, and takes the same room in the feed") {
        Stove stove = with_loads();
        stove.loads[0].standing = Standing::bundled;
        const BuiltStove built = build_network(stove, plain_library());
        const FuelLot& first = built.bed->lots()[built.load_times[2].lot];
        CHECK(first.lit_area == near(8 * 0.03 * 0.11, 1e-12));  // three pieces in a square of two
        CHECK(first.section == near(3 * 0.03 * 0.03, 1e-12));
    }

    TEST_CASE("kindling burns where it was laid") {
        for (const KindlingPlace place :
             {KindlingPlace::feed, KindlingPlace::riser_foot, KindlingPlace::flue}) {
            Stove stove = with_loads();
            stove.kindling->place = place;
            const BuiltStove built = build_network(stove, plain_library());
            const auto& sites = built.network.fire_sites;
            const std::size_t site = built.bed->lots()[built.load_times[0].lot].site;
            const JunctionId at = sites[site];
            CHECK(sites.front() == built.layout.hearth);
            switch (place) {
                case KindlingPlace::feed:
                    CHECK(at == built.layout.hearth);
                    break;
                case KindlingPlace::riser_foot:
                    CHECK(at == built.layout.riser_foot);
                    break;
                case KindlingPlace::flue:
                    CHECK(at == built.network.passages[built.layout.flue.front()].from);
                    break;
            }
            CHECK(built.bed->site_count() == sites.size());
        }
    }

    TEST_CASE("what the wood at the hearth sees does not depend on how finely it is divided") {
        for (const double refine : {1.0, 2.0}) {
            Stove stove = with_loads();
            stove.kindling.reset();
            stove.burn.refine = refine;
            const BuiltStove built = build_network(stove, plain_library());
            std::vector<double> fuel(built.bed->state_count(), 0), rate(fuel.size());
            fuel[0] = 3e-4;
            fuel[1] = 0.3;
            const std::vector<double> walls(built.network.solids.size(), 1200);
            std::vector<double> heat(walls.size());
            const std::vector<Arriving> air(1);
            built.fire->rates({.time = 1000, .fuel = fuel, .solid_temperature = walls}, air, {},
                              rate, heat);
            // Back and half the sides of a box below the feed, less what its top sees of the room.
            const double box = 2 * (0.125 * 0.11 + 0.11 * 0.11 + 0.125 * 0.11);
            const double hearth = (0.125 * 0.11 + 0.11 * 0.11) / box;
            const double open = 0.125 * 0.11 / box * parallel_rectangles(0.125, 0.11, 0.13);
            CHECK(sum_of(heat) < 0);
            CHECK(heat[index(built.layout.hearth_wall.solids[0])] ==
                  near(sum_of(heat) * hearth / (1 - open), 1e-9));
        }
    }

    TEST_CASE("woods that burn together are averaged by mass") {
        Library library = plain_library();
        Wood dense = library.woods.at("wood");
        dense.carbon = 0.523;
        dense.oxygen = 0.416;
        dense.higher_heating_value = 20.8e6;
        library.woods["dense"] = dense;
        Stove stove = with_loads();
        stove.kindling.reset();
        stove.loads[0].mass = 1.6;  // as much as both of the other load
        stove.loads[0].kind = "dense";
        const SolidFuel fuel = build_network(stove, library).fuel;
        CHECK(fuel.wood.carbon == near(0.508, 1e-12));
        CHECK(fuel.wood.higher_heating_value == near(20.3e6, 1e-12));
        CHECK(fuel.wood.carbon + fuel.wood.hydrogen + fuel.wood.oxygen == near(1, 1e-12));
    }

    TEST_CASE("the fire is the one the stove file asks for") {
        Stove stove = plain_stove();
        CHECK(build_network(stove, plain_library()).fire == nullptr);
        stove.heat_source = Table(3000);
        const BuiltStove heated = build_network(stove, plain_library());
        CHECK(heated.network.initial_fuel.size() == 1);
        CHECK(heated.bed == nullptr);
        stove.heat_source.reset();
        stove.burn_rate = Table(0.001);  // as fired
        const BuiltStove table = build_network(stove, plain_library());
        CHECK(table.fire->pyrolysis(0, {}) == near(0.001 * 0.84 * 0.995, 1e-12));
        CHECK(table.bed == nullptr);
    }

    TEST_CASE("an unknown material or wood is refused by name") {
        Stove stove = plain_stove();
        stove.riser.lining = {{"cheese", 0.02}};
        CHECK_THROWS_WITH_AS(build_network(stove, plain_library()), "no material is called cheese",
                             InputError);
        Stove odd = with_loads();
        odd.loads[0].kind = "cheese";
        CHECK_THROWS_WITH_AS(build_network(odd, plain_library()), "no wood is called cheese",
                             InputError);
    }

    TEST_CASE("no share of the heat is fixed: it moves with the wood and with the port") {
        const Shares usual(0.5, 0.09), strong(1.0, 0.09), choked(0.5, 0.02);
        CHECK(usual.air > 0.003);
        CHECK(choked.air < 0.7 * usual.air);
        CHECK(usual.tunnel + usual.riser > 0.9);
        CHECK(usual.riser > 0);
        // Twice the wood is a longer flame: more of it in the riser and beyond.
        CHECK(strong.riser > usual.riser + 0.03);
        // Less air mixes later.
        CHECK(choked.riser > usual.riser + 0.03);
        CHECK(choked.tunnel < usual.tunnel - 0.03);
    }
}

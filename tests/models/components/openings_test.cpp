#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "models/components/parts.h"
#include "models/laws/losses.h"
#include "models/stove_run.h"
#include "solver/errors.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// Pressure [Pa] lost in a passage full of room air, at a flow [kg/s].
double cold_loss(const StoveBuilder& builder, std::size_t passage, double flow) {
    const double room = builder.stove.site.room;
    return Crossed(*builder.network.passages[passage].law, flow, room, room, *builder.gas.model,
                   builder.network.solids.size(), builder.network.settings)
        .crossing.loss;
}

Stove with_side_air(const Steps& open) {
    Stove stove = plain_stove();
    stove.side_air = {{.area = 5e-4, .height = 0.12, .name = "slot"}};
    stove.schedule.side_air = open;
    return stove;
}

/// Share [-] of the riser's gas that goes through a bypass open so far, with 10 g/s into a stove
/// whose walls and gas are all as warm as the room and whose barrel is narrow: 10 mm round the
/// riser.
double bypassed(double open) {
    Stove stove = plain_stove();
    stove.barrel->diameter = 0.1994;
    stove.plate->diameter = 0.22;
    stove.bypass = Bypass{.bore = 0.125, .length = 0.6};
    stove.schedule.bypass = Steps(open);
    StoveRun run(stove, plain_library());
    std::vector<double> state = run.built.network.initial_state(), rate(state.size());
    run.balance.rates_at_flow(0, state, 0.01, rate);
    const March& march = run.balance.flow().march();
    return march.mass_flow(*run.built.layout.bypass) / march.mass_flow(*run.built.layout.riser);
}

}  // namespace

TEST_SUITE("models/components/openings") {
    TEST_CASE("side air shut by half passes less") {
        constexpr double flow = 2e-3;
        Workshop open(with_side_air(Steps(1))), half(with_side_air(Steps(0.5)));
        for (Workshop* shop : {&open, &half}) {
            add_feed(shop->builder);
            add_side_air(shop->builder);
        }
        const std::size_t slot = open.builder.layout.side_air[0];
        const double speed = flow / (open.builder.room_density * 5e-4);
        const double head = 0.5 * open.builder.room_density * speed * speed;
        // Idelchik's (0.707 sqrt(1/2) + 1/2)^2 is 1 within 1e-3, on four times the head.
        CHECK(cold_loss(half.builder, slot, flow) - cold_loss(open.builder, slot, flow) ==
              near(4 * head, 2e-3));
        // The same pressure drives 1 / sqrt(1 + 4 / 2.8) of the flow through.
        const double less = flow / std::sqrt(1 + 4 / hole_loss());
        // Slow flow adds 500 over Re of some 5000: a tenth, of 2.8.
        CHECK(cold_loss(half.builder, slot, less) ==
              near(cold_loss(open.builder, slot, flow), 0.03));
    }

    TEST_CASE("side air from the room is room air, ducted side air is outdoor air") {
        for (const bool outdoors : {false, true}) {
            Stove stove = with_side_air(Steps(1));
            stove.side_air[0].outdoors = outdoors;
            Workshop shop(stove);
            add_feed(shop.builder);
            add_side_air(shop.builder);
            const Network& network = shop.builder.network;
            const JunctionId end = network.passages[shop.builder.layout.side_air[0]].from;
            const Junction& around = network.junctions[index(end)];
            const double air = outdoors ? stove.site.outdoor(0) : stove.site.room;
            CHECK(around.boundary);
            CHECK(around.gas.enthalpy ==
                  near(shop.builder.gas.model->mixture(dry_air()).enthalpy(air), 1e-12));
            // Outdoor air stands at the pressure that heights are measured against.
            const double column = constants::gravity * 0.055 *  // at the axis of the tunnel
                                  (shop.builder.gas.outdoor_density - shop.builder.room_density);
            CHECK(around.pressure == doctest::Approx(outdoors ? 0 : column));
            const auto& room = shop.builder.layout.room_air;
            CHECK(std::count(room.begin(), room.end(), end) == (outdoors ? 0 : 1));
        }
    }

    TEST_CASE("a duct to the side air adds its friction") {
        Stove stove = with_side_air(Steps(1));
        stove.side_air[0].outdoors = true;
        Workshop without(stove);
        stove.side_air[0].duct_length = 2;
        Workshop with(stove);
        for (Workshop* shop : {&without, &with}) {
            add_feed(shop->builder);
            add_side_air(shop->builder);
        }
        const std::size_t slot = with.builder.layout.side_air[0];
        const double bore = std::sqrt(4 / constants::pi * 5e-4);
        const double speed = 2e-3 / (with.builder.room_density * 5e-4);
        const double head = 0.5 * with.builder.room_density * speed * speed;
        const double friction =
            (cold_loss(with.builder, slot, 2e-3) - cold_loss(without.builder, slot, 2e-3)) /
            (head * 2 / bore);
        CHECK(friction > 0.037);  // smooth at Re 5500
        CHECK(friction < 0.08);   // of a roughness of a 25th of the bore
    }

    TEST_CASE("a leak is an inlet from the room at its own junction and height") {
        Stove stove = plain_stove();
        stove.leaks = {{"lid", 1e-4, LeakPlace::under_plate},
                       {"collar", 2e-4, LeakPlace::flue_outlet},
                       {"joint", 3e-4, LeakPlace::tunnel}};
        const BuiltStove built = build_network(stove, plain_library());
        const Layout& layout = built.layout;
        const GasModel& model = *built.gas;
        const double lighter = model.mixture(dry_air()).density(278.15, 101325) -
                               model.mixture(dry_air()).density(293.15, 101325);
        const JunctionId joints[] = {layout.under_plate, layout.flue_outlet, layout.riser_foot};
        const double heights[] = {0.77, 0.77 - 0.62 + 0.075, 0.055};
        REQUIRE(layout.leaks.size() == 3);
        for (std::size_t i = 0; i < 3; ++i) {
            CAPTURE(i);
            const Passage& leak = built.network.passages[layout.leaks[i]];
            CHECK(leak.inlet);
            CHECK(leak.to == joints[i]);
            const auto& room = layout.room_air;
            CHECK(std::find(room.begin(), room.end(), leak.from) != room.end());
            CHECK(built.network.junctions[index(leak.from)].pressure ==
                  near(constants::gravity * heights[i] * lighter, 1e-9));
        }
    }

    TEST_CASE("a bypass leads from under the plate to the flue outlet") {
        Stove stove = plain_stove();
        stove.bypass = Bypass{.bore = 0.1, .length = 0.6};
        const BuiltStove built = build_network(stove, plain_library());
        REQUIRE(built.layout.bypass);
        const Passage& bypass = built.network.passages[*built.layout.bypass];
        CHECK(bypass.from == built.layout.under_plate);
        CHECK(bypass.to == built.layout.flue_outlet);
        CHECK(bypass.law->touches().size() == 3);  // its sheet, so that still gas has a temperature
        // Both ways down from there are equally high: no gas is driven round them by itself.
        std::vector<double> walls(built.network.solids.size(), 600);
        const auto gained = [&](std::size_t p) {
            const GasState gas{.enthalpy = built.gas->mixture(dry_air()).enthalpy(600),
                               .mass_fraction = dry_air()};
            return Crossed(*built.network.passages[p].law, 0.005, gas, walls,
                           built.network.settings)
                .crossing.buoyancy;
        };
        CHECK(gained(*built.layout.bypass) == near(gained(*built.layout.annulus), 1e-6));
    }

    TEST_CASE("a bypass may join the flue further on, at the height where that section begins") {
        Stove stove = plain_stove();
        stove.bypass = Bypass{.bore = 0.1, .length = 0.6, .into = "stack"};
        stove.flue.sections[0].rise = 0.2;
        const BuiltStove built = build_network(stove, plain_library());
        const Passage& bypass = built.network.passages[*built.layout.bypass];
        CHECK(bypass.to == built.network.passages[built.layout.flue[1]].from);
        const GasState gas{.enthalpy = built.gas->mixture(dry_air()).enthalpy(600),
                           .mass_fraction = dry_air()};
        const std::vector<double> walls(built.network.solids.size(), 600);
        const auto gained = [&](std::size_t p) {
            return Crossed(*built.network.passages[p].law, 0.005, gas, walls,
                           built.network.settings)
                .crossing.buoyancy;
        };
        CHECK(gained(*built.layout.bypass) ==
              near(gained(*built.layout.annulus) + gained(built.layout.flue[0]), 1e-6));
        stove.bypass->into = "nowhere";
        CHECK_THROWS_AS(build_network(stove, plain_library()), InputError);
    }

    TEST_CASE(
        "an open bypass takes most of the gas from a narrow barrel, a shut one next to none") {
        CHECK(bypassed(1) > 0.5);
        CHECK(bypassed(0) < 0.05);
        CHECK(bypassed(0) > 0);  // nothing shuts tight
        CHECK(bypassed(0.5) < bypassed(1));
        CHECK(bypassed(0.5) > bypassed(0));
    }
}

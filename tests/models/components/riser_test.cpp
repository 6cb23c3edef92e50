#include <doctest/doctest.h>

#include "models/components/parts.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

using constants::pi;

void build_to_riser(Workshop& shop) {
    add_feed(shop.builder);
    add_tunnel(shop.builder);
    add_riser(shop.builder);
}

}  // namespace

TEST_SUITE("models/components/riser") {
    TEST_CASE("the riser reaches from the tunnel's axis to its top, whatever stands round it") {
        for (const double outlet : {0.07, 0.075, 0.3})
            for (const double underside : {0.73, 0.77, 0.9}) {
                Stove stove = plain_stove();
                stove.flue.outlet = outlet;
                stove.plate->underside = underside;
                Workshop shop(stove);
                build_to_riser(shop);
                const Layout& layout = shop.builder.layout;
                CHECK(rise_of(shop.builder, *layout.riser) == near(0.725 - 0.055, 1e-9));
                const double r = 0.0625, sheet = r + 0.025, skin = r + 0.026, height = 0.67;
                CHECK(shop.mass("riser.wall") == near(pi * height *
                                                          (500 * (sheet * sheet - r * r) +
                                                           7850 * (skin * skin - sheet * sheet)),
                                                      1e-9));
                double last = 0.055;
                for (const double at : layout.riser_gas_height) {
                    CHECK(at > last);
                    CHECK(at < 0.725);
                    last = at;
                }
                CHECK(layout.riser_gas_height.size() == layout.riser_inside.solids.size());
                CHECK(layout.riser_gas_height.size() == layout.riser_skin.solids.size());
                // Only what is below the barrel's foot loses heat to the room.
                const double bare = underside - 0.62 - 0.055;
                REQUIRE(shop.face("riser"));
                CHECK(sum_of(shop.face("riser")->area) == near(2 * pi * skin * bare, 1e-9));
            }
    }

    TEST_CASE("without a barrel the whole riser loses heat to the room") {
        Stove stove = plain_stove();
        stove.barrel.reset();
        stove.plate.reset();
        Workshop shop(stove);
        build_to_riser(shop);
        CHECK(sum_of(shop.face("riser")->area) == near(2 * pi * 0.0885 * 0.67, 1e-9));
        CHECK(shop.builder.layout.outlet == shop.builder.layout.riser_end);
    }

    TEST_CASE("a slot riser weighs as one of the same perimeter") {
        Stove stove = plain_stove();
        stove.barrel.reset();
        stove.plate.reset();
        stove.riser.bore = 0;
        stove.riser.width = stove.riser.depth = 0.125 * pi / 4;
        Workshop square(stove);
        build_to_riser(square);
        stove.riser.bore = 0.125;
        Workshop round(stove);
        build_to_riser(round);
        CHECK(square.mass("riser.wall") == near(round.mass("riser.wall"), 1e-9));
    }

    TEST_CASE("walls held for a bench test hold all along the inner face and nowhere else") {
        Stove stove = plain_stove();
        stove.riser.wall_temperature = 1000;
        Workshop shop(stove);
        build_to_riser(shop);
        std::size_t held = 0;
        for (const Solid& solid : shop.builder.network.solids)
            if (solid.held) {
                ++held;
                CHECK(solid.initial_temperature == 1000);
            }
        CHECK(held == shop.builder.layout.riser_inside.solids.size());
        for (const SolidId id : shop.builder.layout.riser_inside.solids)
            CHECK(shop.builder.network.solids[index(id)].held);
    }

    TEST_CASE("finer cells divide the same riser") {
        Stove stove = plain_stove();
        Workshop usual(stove);
        build_to_riser(usual);
        stove.burn.refine = 2;
        Workshop fine(stove);
        build_to_riser(fine);
        CHECK(fine.builder.layout.riser_gas_height.size() ==
              2 * usual.builder.layout.riser_gas_height.size());
        CHECK(fine.mass("riser.wall") == near(usual.mass("riser.wall"), 1e-9));
    }
}

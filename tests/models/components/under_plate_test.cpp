#include "models/components/under_plate.h"

#include <doctest/doctest.h>

#include "models/components/layered_wall.h"
#include "models/components/parts.h"
#include "solver/errors.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

using constants::pi;

struct Sizes {
    double bore, lining, barrel, gap, refine;
};

Stove stove_of(const Sizes& sizes) {
    Stove stove = plain_stove();
    stove.riser.bore = sizes.bore;
    stove.riser.lining = {{"board", sizes.lining}};
    stove.barrel->diameter = sizes.barrel;
    stove.plate->diameter = sizes.barrel + 0.02;
    stove.plate->underside = stove.riser.top + sizes.gap;
    stove.barrel->height = 0.6;
    stove.burn.refine = sizes.refine;
    return stove;
}

const std::vector<Sizes> geometries{{0.125, 0.026, 0.4, 0.045, 1},
                                    {0.2, 0.05, 0.57, 0.06, 1},
                                    {0.15, 0.01, 0.35, 0.2, 1},
                                    {0.1, 0.08, 0.6, 0.01, 2},
                                    {0.18, 0.03, 0.5, 0.08, 4}};

const RadiationEnclosure& under_plate(Workshop& shop) {
    add_feed(shop.builder);
    add_tunnel(shop.builder);
    add_riser(shop.builder);
    add_plate(shop.builder);
    add_barrel(shop.builder);
    for (const RadiationEnclosure& enclosure : shop.builder.network.enclosures)
        if (enclosure.name == "under the plate") return enclosure;
    throw SolverError("nothing sees the plate");
}

}  // namespace

TEST_SUITE("models/components/under_plate") {
    TEST_CASE("each surface's weights sum to one, whatever the stove's measures") {
        for (const Sizes& sizes : geometries) {
            Workshop shop(stove_of(sizes));
            const RadiationEnclosure& enclosure = under_plate(shop);
            REQUIRE(enclosure.patches.size() == 7);
            for (const auto& patch : enclosure.patches) {
                double sum = 0;
                for (const auto& share : patch) {
                    CHECK(share.weight > 0);
                    sum += share.weight;
                }
                CHECK(sum == near(1, 1e-9));
            }
        }
    }

    TEST_CASE("what a surface sends out arrives, and as much would come back") {
        for (const Sizes& sizes : geometries) {
            Workshop shop(stove_of(sizes));
            const auto exchange = under_plate(shop).exchange_area;
            REQUIRE(exchange.size() == 49);
            const double bore = sizes.bore / 2, skin = bore + sizes.lining,
                         inner = sizes.barrel / 2 - 0.0012;
            // Mouth and open space are black, the rest is sooted.
            const std::array<double, 7> absorbs{
                1.0 * pi * bore * bore,
                sooted_emissivity * pi * (skin * skin - bore * bore),
                1.0 * pi * (inner * inner - skin * skin),
                sooted_emissivity * pi * bore * bore,
                sooted_emissivity * pi * (skin * skin - bore * bore),
                sooted_emissivity * pi * (inner * inner - skin * skin),
                sooted_emissivity * 2 * pi * inner * sizes.gap,
            };
            for (std::size_t i = 0; i < 7; ++i) {
                double row = 0;
                for (std::size_t j = 0; j < 7; ++j) {
                    CHECK(exchange[7 * i + j] >= 0);
                    CHECK(exchange[7 * i + j] == exchange[7 * j + i]);
                    row += exchange[7 * i + j];
                }
                CHECK(row == near(absorbs[i], 1e-6));
            }
        }
    }

    TEST_CASE("close under the plate the mouth shines on what is over it, far below on the rest") {
        Workshop close(stove_of({0.15, 0.05, 0.5, 0.01, 1}));
        const auto near_by = under_plate(close).exchange_area;
        Workshop apart(stove_of({0.15, 0.05, 0.5, 0.3, 1}));
        const auto far = under_plate(apart).exchange_area;
        CHECK(near_by[3] > 0.7 * sooted_emissivity * pi * 0.075 * 0.075);
        CHECK(far[3] < 0.3 * near_by[3]);
        CHECK(far[6] > 2 * near_by[6]);
    }
}

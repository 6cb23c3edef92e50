#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "models/components/parts.h"
#include "models/laws/losses.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

using constants::pi;

void build_to_plate(Workshop& shop) {
    add_feed(shop.builder);
    add_tunnel(shop.builder);
    add_riser(shop.builder);
    add_plate(shop.builder);
}

}  // namespace

TEST_SUITE("models/components/plate") {
    TEST_CASE("the rings together are the plate, overhang and all") {
        for (const double diameter : {0.3976, 0.42, 0.6})
            for (const double refine : {1.0, 3.0}) {
                Stove stove = plain_stove();
                stove.plate->diameter = diameter;
                stove.burn.refine = refine;
                Workshop shop(stove);
                build_to_plate(shop);
                const Layout& layout = shop.builder.layout;
                const double area = pi / 4 * diameter * diameter;
                CHECK(shop.mass("plate.ring") == near(7850 * 0.006 * area, 1e-9));
                REQUIRE(layout.plate_edge.size() == layout.plate.solids.size() + 1);
                CHECK(std::is_sorted(layout.plate_edge.begin(), layout.plate_edge.end()));
                CHECK(layout.plate_edge.front() == 0);
                CHECK(layout.plate_edge.back() == near(diameter / 2, 1e-9));
                // The overhang also loses heat downwards.
                const double inner = 0.2 - 0.0012;
                const double over = pi * (diameter * diameter / 4 - inner * inner);
                CHECK(sum_of(shop.face("plate")->area) == near(area + over, 1e-9));
            }
    }

    TEST_CASE("the turn is level, and each ring under the barrel meets the gas once") {
        Workshop shop;
        build_to_plate(shop);
        const Layout& layout = shop.builder.layout;
        CHECK(rise_of(shop.builder, *layout.turn) == doctest::Approx(0));
        const PassageLaw& law = *shop.builder.network.passages[*layout.turn].law;
        const double inner = 0.2 - 0.0012;
        std::size_t under = 0;
        for (std::size_t i = 0; i < layout.plate.solids.size(); ++i) {
            const auto touches = std::count_if(
                law.touches().begin(), law.touches().end(),
                [&](const Touch& t) { return t.solid == index(layout.plate.solids[i]); });
            const bool below = layout.plate_edge[i + 1] < inner + 1e-9;
            CHECK(touches == (below ? 1 : 0));
            under += below ? 1 : 0;
        }
        CHECK(under == 8);
        CHECK(law.cell_count() == 8);
    }

    TEST_CASE("rings within the jet take more heat from each square metre than those outside") {
        Workshop shop;
        build_to_plate(shop);
        const Layout& layout = shop.builder.layout;
        const Crossed crossed(*shop.builder.network.passages[*layout.turn].law, 0.01, 1000, 500,
                              *shop.builder.gas.model, shop.builder.network.solids.size());
        const auto coefficient = [&](std::size_t i) {
            const double outer = layout.plate_edge[i + 1], inner = layout.plate_edge[i];
            return crossed.conductance[i] / (pi * (outer * outer - inner * inner));
        };
        CHECK(coefficient(0) > 1.1 * coefficient(7));
    }

    TEST_CASE("a lower plate costs more to turn under, by the law of the turn") {
        double last = 0;
        for (const double gap : {0.1, 0.06, 0.03}) {
            Stove stove = plain_stove();
            stove.plate->underside = stove.riser.top + gap;
            Workshop shop(stove);
            build_to_plate(shop);
            const double loss =
                Crossed(*shop.builder.network.passages[*shop.builder.layout.turn].law, 0.05, 500,
                        500, *shop.builder.gas.model, shop.builder.network.solids.size())
                    .crossing.loss;
            const double density =
                shop.builder.gas.model->mixture(dry_air()).density(500, stove.site.pressure);
            const double speed = 0.05 / (density * pi / 4 * 0.125 * 0.125);
            // Slow flow adds 500 over Re of about 19 000.
            CHECK(loss / (0.5 * density * speed * speed) ==
                  doctest::Approx(turn_under_plate_loss(gap / 0.125) + 0.026).epsilon(0.01));
            CHECK(loss > last);
            last = loss;
        }
    }

    TEST_CASE("heat spreads from ring to ring as round a disc") {
        Workshop shop;
        build_to_plate(shop);
        const Layout& layout = shop.builder.layout;
        const auto& rings = layout.plate.solids;
        std::size_t found = 0;
        for (const ConductionLink& link : shop.builder.network.links)
            for (std::size_t i = 0; i + 1 < rings.size(); ++i)
                if (link.a == rings[i] && link.b == rings[i + 1]) {
                    ++found;
                    CHECK(1 / link.shape_a + 1 / link.shape_b ==
                          near(std::log(layout.plate.position[i + 1] / layout.plate.position[i]) /
                                   (2 * pi * 0.006),
                               1e-9));
                }
        CHECK(found == rings.size() - 1);
    }

    TEST_CASE("a cover in a hole is as thick as it is, and sits on the plate as a lid on its rim") {
        for (const double hole : {0.05, 0.125, 0.15, 0.3}) {
            Stove stove = plain_stove();
            stove.plate->hole = hole;
            stove.plate->hole_cover = 0.004;
            Workshop shop(stove);
            build_to_plate(shop);
            const Layout& layout = shop.builder.layout;
            REQUIRE(layout.plate_edge[layout.hole_rings] == near(hole / 2, 1e-9));
            CHECK(shop.mass("plate.ring") ==
                  near(7850 * pi / 4 * (0.004 * hole * hole + 0.006 * (0.42 * 0.42 - hole * hole)),
                       1e-9));
            std::size_t seats = 0;
            for (const ConductionLink& link : shop.builder.network.links)
                if (link.b == layout.plate.solids[layout.hole_rings]) {
                    ++seats;
                    CHECK(link.a == layout.plate.solids[layout.hole_rings - 1]);
                    CHECK(link.contact ==
                          near(1 / (seat_conductance * pi * hole * seat_width), 1e-9));
                }
            CHECK(seats == 1);
            // Riser and skin keep their edges, which the radiation under the plate needs.
            for (const double radius : {0.125 / 2, 0.125 / 2 + 0.026})
                CHECK(std::any_of(layout.plate_edge.begin(), layout.plate_edge.end(),
                                  [&](double edge) { return std::abs(edge - radius) < 1e-9; }));
        }
    }

    TEST_CASE("without a barrel there is no plate") {
        Stove stove = plain_stove();
        stove.barrel.reset();
        Workshop shop(stove);
        build_to_plate(shop);
        CHECK_FALSE(shop.builder.layout.turn);
        CHECK(shop.builder.layout.plate.solids.empty());
    }
}

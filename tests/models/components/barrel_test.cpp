#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "models/components/parts.h"
#include "solver/errors.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

using constants::pi;

void build_to_barrel(Workshop& shop) {
    add_feed(shop.builder);
    add_tunnel(shop.builder);
    add_riser(shop.builder);
    add_plate(shop.builder);
    add_barrel(shop.builder);
}

}  // namespace

TEST_SUITE("models/components/barrel") {
    TEST_CASE("the hoops cover the barrel's height exactly") {
        for (const double height : {0.3, 0.62, 0.7})
            for (const double outlet : {0.02, 0.075, 0.2})
                for (const double refine : {1.0, 2.0}) {
                    Stove stove = plain_stove();
                    stove.barrel->height = height;
                    stove.flue.outlet = outlet;
                    stove.burn.refine = refine;
                    Workshop shop(stove);
                    build_to_barrel(shop);
                    const double outer = 0.2, inner = 0.2 - 0.0012;
                    CHECK(shop.mass("barrel.") ==
                          near(7850 * pi * (outer * outer - inner * inner) * height, 1e-9));
                    CHECK(sum_of(shop.face("barrel")->area) == near(2 * pi * outer * height, 1e-9));
                    const auto& positions = shop.builder.layout.barrel.position;
                    CHECK(std::is_sorted(positions.rbegin(), positions.rend()));
                    CHECK(positions.front() < 0.77);
                    CHECK(positions.back() > 0.77 - height);
                }
    }

    TEST_CASE("gas falls round the riser from its top to the flue outlet") {
        for (const double outlet : {0.02, 0.075, 0.2}) {
            Stove stove = plain_stove();
            stove.flue.outlet = outlet;
            Workshop shop(stove);
            build_to_barrel(shop);
            const double bottom = 0.77 - 0.62 + outlet;
            CHECK(rise_of(shop.builder, *shop.builder.layout.annulus) ==
                  near(bottom - 0.725, 1e-9));
            for (const double at : shop.builder.layout.annulus_gas_height) CHECK(at > bottom);
        }
    }

    TEST_CASE("the riser's skin sees the barrel all the way, each hoop the skin beside it") {
        Workshop shop;
        build_to_barrel(shop);
        const Layout& layout = shop.builder.layout;
        double exchange = 0;
        std::size_t pairs = 0;
        for (const RadiationEnclosure& enclosure : shop.builder.network.enclosures)
            if (enclosure.name == "round the riser") {
                ++pairs;
                CHECK(enclosure.exchange_area[1] == enclosure.exchange_area[2]);
                exchange += enclosure.exchange_area[1];
            }
        CHECK(pairs == layout.barrel.solids.size() - 1);  // one hoop stands over the riser
        constexpr double sooted = 0.95;  // as models/components/layered_wall.h has it
        const double skin = 2 * pi * 0.0885 * (0.725 - 0.15);
        const double wall = 2 * pi * 0.1988 * (0.725 - 0.15);
        CHECK(exchange == near(skin / (1 / sooted + (1 / sooted - 1) * skin / wall), 1e-9));
    }

    TEST_CASE("every wall round the riser is touched by gas, below the outlet by the lowest") {
        Workshop shop;
        build_to_barrel(shop);
        const Layout& layout = shop.builder.layout;
        const PassageLaw& law = *shop.builder.network.passages[*layout.annulus].law;
        for (std::size_t i = 0; i < layout.riser_skin.solids.size(); ++i) {
            const auto touches = std::count_if(
                law.touches().begin(), law.touches().end(),
                [&](const Touch& t) { return t.solid == index(layout.riser_skin.solids[i]); });
            CHECK(touches == (layout.riser_skin.position[i] > 0.15 ? 1 : 0));
        }
        CHECK(law.cell_count() == layout.annulus_gas_height.size());
    }

    TEST_CASE("the lid sits on the barrel's rim and passes heat to it") {
        Workshop shop;
        build_to_barrel(shop);
        const Layout& layout = shop.builder.layout;
        const auto seat =
            std::find_if(shop.builder.network.links.begin(), shop.builder.network.links.end(),
                         [&](const auto& link) {
                             return link.b == layout.barrel.solids.front() && link.contact > 0;
                         });
        REQUIRE(seat != shop.builder.network.links.end());
        // 200 W/(m2 K) over a seat of 10 mm: our choice in the model.
        CHECK(1 / seat->contact == near(200 * 2 * pi * 0.1988 * 0.01, 1e-9));
        const auto ring =
            std::find(layout.plate.solids.begin(), layout.plate.solids.end(), seat->a);
        REQUIRE(ring != layout.plate.solids.end());
        const auto at = static_cast<std::size_t>(ring - layout.plate.solids.begin());
        CHECK(layout.plate_edge[at] < 0.1988);
        CHECK(layout.plate_edge[at + 1] > 0.1988 - 1e-9);
    }

    TEST_CASE("a jacket wraps the hoops whose middle it reaches, and has a face of its own") {
        Workshop plain;
        build_to_barrel(plain);
        Stove stove = plain_stove();
        stove.barrel->jacket = {{"board", 0.03}, {"brick", 0.01}};
        stove.barrel->jacket_from = 0.3;
        stove.barrel->jacket_to = 0.6;
        Workshop shop(stove);
        build_to_barrel(shop);
        const auto &bare = plain.builder.layout.barrel, &layout = shop.builder.layout.barrel;
        CHECK(layout.position == bare.position);
        double wrapped = 0;  // [m] of height
        // What is told of the barrel is steel all the way.
        for (const SolidId solid : layout.solids)
            CHECK(shop.builder.layout.material[index(solid)] == "sheet");
        const OutsideFace *shell = shop.face("barrel"), *jacket = shop.face("barrel jacket");
        REQUIRE(shell != nullptr);
        REQUIRE(jacket != nullptr);
        for (std::size_t k = 0; k < jacket->solids.size(); ++k) {
            CHECK(shop.builder.layout.material[index(jacket->solids[k])] == "brick");
            wrapped += jacket->area[k] / (2 * pi * 0.24);
        }
        const auto reached = std::count_if(bare.position.begin(), bare.position.end(),
                                           [](double at) { return at > 0.3 && at < 0.6; });
        CHECK(static_cast<std::ptrdiff_t>(jacket->solids.size()) == reached);
        CHECK(jacket->solids.size() + shell->solids.size() == bare.solids.size());
        CHECK(sum_of(shell->area) == near(2 * pi * 0.2 * (0.62 - wrapped), 1e-9));
        // Whole hoops: each edge at most half of one, 82 mm, off.
        CHECK(std::abs(wrapped - 0.3) < 0.083);
        CHECK(shop.mass("barrel.") > plain.mass("barrel.") + 1);
    }

    TEST_CASE("a jacket's hoops stay joined along the steel, as bare ones are") {
        Workshop plain;
        build_to_barrel(plain);
        Stove stove = plain_stove();
        stove.barrel->jacket = {{"board", 0.03}};
        stove.barrel->jacket_from = 0.4;
        stove.barrel->jacket_to = 0.77;
        Workshop shop(stove);
        build_to_barrel(shop);
        const auto along = [](const Workshop& of) {
            const auto& hoops = of.builder.layout.barrel.solids;
            std::vector<double> shapes;
            for (std::size_t i = 1; i < hoops.size(); ++i)
                for (const auto& link : of.builder.network.links)
                    if (link.a == hoops[i - 1] && link.b == hoops[i])
                        shapes.push_back(link.shape_a);
            return shapes;
        };
        CHECK(along(plain).size() == plain.builder.layout.barrel.solids.size() - 1);
        CHECK(along(shop) == along(plain));
        // And the lid still sits on steel.
        CHECK(std::count_if(shop.builder.network.links.begin(), shop.builder.network.links.end(),
                            [&](const auto& link) {
                                return link.b == shop.builder.layout.barrel.solids.front() &&
                                       link.contact > 0;
                            }) == 1);
    }

    TEST_CASE("a jacket of no layers changes nothing, and one too low for a hoop is refused") {
        Workshop plain;
        build_to_barrel(plain);
        Stove stove = plain_stove();
        stove.barrel->jacket_from = 0.3;
        stove.barrel->jacket_to = 0.6;
        Workshop shop(stove);
        build_to_barrel(shop);
        CHECK(shop.builder.network.solids.size() == plain.builder.network.solids.size());
        CHECK(shop.builder.network.links.size() == plain.builder.network.links.size());
        CHECK(shop.face("barrel jacket") == nullptr);
        stove.barrel->jacket = {{"board", 0.03}};
        stove.barrel->jacket_from = plain.builder.layout.barrel.position[3] + 0.001;
        stove.barrel->jacket_to = stove.barrel->jacket_from + 0.02;
        Workshop low(stove);
        CHECK_THROWS_AS(build_to_barrel(low), InputError);
        // All of it wrapped, nothing is left bare.
        stove.barrel->jacket_from = 0.15;
        stove.barrel->jacket_to = 0.77;
        Workshop whole(stove);
        build_to_barrel(whole);
        CHECK(whole.face("barrel") == nullptr);
        CHECK(sum_of(whole.face("barrel jacket")->area) == near(2 * pi * 0.23 * 0.62, 1e-9));
    }

    TEST_CASE("without a barrel the gas goes from the riser straight on") {
        Stove stove = plain_stove();
        stove.barrel.reset();
        stove.plate.reset();
        Workshop shop(stove);
        build_to_barrel(shop);
        CHECK_FALSE(shop.builder.layout.annulus);
        CHECK(shop.builder.layout.outlet == shop.builder.layout.riser_end);
    }

    TEST_CASE("a square riser has a barrel round it as a round one of its girth has") {
        Stove square = plain_stove();
        square.riser.bore = 0;
        square.riser.width = square.riser.depth = 0.1;
        Stove round = plain_stove();
        round.riser.bore = 0.4 / constants::pi;
        Workshop one(square), other(round);
        for (Workshop* shop : {&one, &other}) {
            add_feed(shop->builder);
            add_tunnel(shop->builder);
            add_riser(shop->builder);
            add_plate(shop->builder);
            add_barrel(shop->builder);
        }
        CHECK(one.builder.layout.plate_edge == other.builder.layout.plate_edge);
        const auto& here = one.builder.network.enclosures;
        const auto& there = other.builder.network.enclosures;
        REQUIRE(here.size() == there.size());
        for (std::size_t i = 0; i < here.size(); ++i)
            CHECK(here[i].exchange_area == there[i].exchange_area);
    }
}

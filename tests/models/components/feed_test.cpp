#include <doctest/doctest.h>

#include "models/components/parts.h"
#include "models/laws/losses.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// Pressure [Pa] lost in a passage full of room air and walls as warm, at a flow [kg/s].
double cold_loss(const StoveBuilder& builder, std::size_t passage, double flow,
                 std::span<const double> settings) {
    const double room = builder.stove.site.room;
    return Crossed(*builder.network.passages[passage].law, flow, room, room, *builder.gas.model,
                   builder.network.solids.size(), settings)
        .crossing.loss;
}
double cold_loss(const StoveBuilder& builder, std::size_t passage, double flow) {
    return cold_loss(builder, passage, flow, builder.network.settings);
}

}  // namespace

TEST_SUITE("models/components/feed") {
    TEST_CASE("the feed runs from its mouth down to the tunnel's axis, lined above the roof") {
        Workshop shop;
        add_feed(shop.builder);
        CHECK(rise_of(shop.builder, *shop.builder.layout.feed) == near(0.055 - 0.24, 1e-9));
        // Four sides of 125 x 110 mm, curved to a round duct of the same perimeter for conduction.
        const double perimeter = 2 * (0.125 + 0.11), radius = perimeter / (2 * constants::pi);
        const double lined = 0.24 - 0.11, outer = radius + 0.064;
        CHECK(shop.mass("feed.wall") ==
              near(2000 * constants::pi * (outer * outer - radius * radius) * lined, 1e-9));
        CHECK(sum_of(shop.face("feed")->area) == near(2 * constants::pi * outer * lined, 1e-9));
        CHECK(shop.builder.network.passages[*shop.builder.layout.feed].inlet);
    }

    TEST_CASE("wood that stands in the feed narrows its mouth") {
        Workshop shop;
        add_feed(shop.builder);
        const std::size_t setting = shop.builder.layout.feed_free_area.value();
        CHECK(shop.builder.network.settings[setting] == near(0.125 * 0.11, 1e-12));
        std::vector<double> settings = shop.builder.network.settings;
        const double open = cold_loss(shop.builder, *shop.builder.layout.feed, 0.01);
        settings[setting] /= 3;
        CHECK(cold_loss(shop.builder, *shop.builder.layout.feed, 0.01, settings) > 3 * open);

        Stove stove = plain_stove();
        stove.feed->free_share = 0.4;
        Workshop narrow(stove);
        add_feed(narrow.builder);
        CHECK(narrow.builder.network.settings[*narrow.builder.layout.feed_free_area] ==
              near(0.4 * 0.125 * 0.11, 1e-12));
    }

    TEST_CASE("the mouth draws room air, at the pressure of the room at its height") {
        Stove stove = plain_stove();
        stove.site.room_suction = Table(5);
        stove.site.room_suction_height = 1;
        Workshop shop(stove);
        add_feed(shop.builder);
        const Junction& room =
            shop.builder.network
                .junctions[index(shop.builder.network.passages[*shop.builder.layout.feed].from)];
        CHECK(room.boundary);
        // The warm room's column gains on the outdoor one, so lower down it is further below it.
        CHECK(room.pressure ==
              near(-5 - constants::gravity *
                            (shop.builder.gas.outdoor_density - shop.builder.room_density) * 0.76,
                   1e-9));
        CHECK(room.gas.enthalpy ==
              near(shop.builder.gas.model->mixture(dry_air()).enthalpy(293.15), 1e-12));
    }

    TEST_CASE("without a feed, air enters level through the port or a plain opening") {
        Stove stove = plain_stove();
        stove.feed.reset();
        Workshop shop(stove);
        add_feed(shop.builder);
        CHECK(rise_of(shop.builder, *shop.builder.layout.feed) == doctest::Approx(0));
        CHECK_FALSE(shop.builder.layout.feed_free_area);
        const double tunnel_mouth = cold_loss(shop.builder, *shop.builder.layout.feed, 0.01);

        stove.tunnel.reset();
        stove.port = Port{.width = 0.05, .height = 0.05};
        Workshop bare(stove);
        add_feed(bare.builder);
        CHECK(cold_loss(bare.builder, *bare.builder.layout.feed, 0.01) > 10 * tunnel_mouth);
    }

    TEST_CASE("side air comes in at the axis and costs a hole's loss") {
        Stove stove = plain_stove();
        stove.side_air = {{.area = 0.0005, .height = 0.12, .name = "a"},
                          {.area = 0.001, .height = 0.02, .name = "b"}};
        Workshop shop(stove);
        add_feed(shop.builder);
        add_side_air(shop.builder);
        REQUIRE(shop.builder.layout.side_air.size() == 2);
        const auto& layout = shop.builder.layout;
        CHECK(rise_of(shop.builder, layout.side_air[0]) == doctest::Approx(0));
        CHECK(rise_of(shop.builder, layout.side_air[1]) == doctest::Approx(0));
        const double density = shop.builder.room_density;
        const double head = 0.5 * 0.002 * 0.002 / (density * 0.0005 * 0.0005);
        const double loss = cold_loss(shop.builder, layout.side_air[0], 0.002);
        // Slow flow adds 500 over Re of about 5000.
        CHECK(loss > hole_loss() * head);
        CHECK(loss < (hole_loss() + 0.2) * head);
        for (const std::size_t p : layout.side_air) {
            CHECK(shop.builder.network.passages[p].inlet);
            CHECK(shop.builder.network.passages[p].to == layout.hearth);
        }
        CHECK(layout.room_air.size() == 3);
    }

    TEST_CASE("a cover over half of the feed's mouth costs a sharp opening of half its area") {
        Workshop open;
        add_feed(open.builder);
        CHECK_FALSE(open.builder.layout.feed_open);
        Stove stove = plain_stove();
        stove.schedule.feed_cover = Steps(0.5);
        Workshop half(stove);
        add_feed(half.builder);
        REQUIRE(half.builder.layout.feed_open);
        CHECK(half.builder.network.settings[*half.builder.layout.feed_open] == 0.5);
        const double speed = 0.05 / (open.builder.room_density * 0.125 * 0.11);
        const double head = 0.5 * open.builder.room_density * speed * speed;
        const double costs = cold_loss(half.builder, *half.builder.layout.feed, 0.05) -
                             cold_loss(open.builder, *open.builder.layout.feed, 0.05);
        // Slow flow adds 500 over Re, here some 25000: twice 0.02 of 5 heads.
        CHECK(costs == near((4 * port_loss(0, 0.5) - entrance_loss()) * head, 0.02));
    }

    TEST_CASE("a cover laid right over the feed still leaks a little") {
        Stove stove = plain_stove();
        stove.schedule.feed_cover = Steps(1);
        Workshop shop(stove);
        add_feed(shop.builder);
        const double open = shop.builder.network.settings[shop.builder.layout.feed_open.value()];
        CHECK(open > 0);
        CHECK(open < 0.05);
    }
}

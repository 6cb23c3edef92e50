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

void build_to_tunnel(Workshop& shop) {
    add_feed(shop.builder);
    add_tunnel(shop.builder);
}

double tunnel_loss(const Stove& stove, double flow) {
    Workshop shop(stove);
    build_to_tunnel(shop);
    return Crossed(*shop.builder.network.passages[*shop.builder.layout.tunnel].law, flow, 900, 900,
                   *shop.builder.gas.model, shop.builder.network.solids.size(),
                   shop.builder.network.settings)
        .crossing.loss;
}

}  // namespace

TEST_SUITE("models/components/tunnel") {
    TEST_CASE("the tunnel is level, its cells evenly spaced, floor, sides and roof apart") {
        Workshop shop;
        build_to_tunnel(shop);
        const Layout& layout = shop.builder.layout;
        CHECK(rise_of(shop.builder, *layout.tunnel) == doctest::Approx(0));
        REQUIRE(layout.tunnel_wall.position.size() == 4);
        CHECK(layout.tunnel_wall.position.front() == near(0.0425, 1e-9));
        CHECK(layout.tunnel_wall.position.back() == near(0.34 - 0.0425, 1e-9));
        CHECK(shop.mass("tunnel.wall") == near(2000 * 0.064 * 0.34 * (0.125 + 0.22), 1e-9));
        CHECK(shop.mass("tunnel.roof") == near(2000 * 0.03 * 0.34 * 0.125, 1e-9));
        CHECK(sum_of(shop.face("tunnel")->area) == near(0.34 * (0.125 + 0.22), 1e-9));
        CHECK(sum_of(shop.face("tunnel roof")->area) == near(0.34 * 0.125, 1e-9));
    }

    TEST_CASE("the wall behind the fire is touched by the first stretch of gas alone") {
        Workshop shop;
        build_to_tunnel(shop);
        const Layout& layout = shop.builder.layout;
        REQUIRE(layout.hearth_wall.solids.size() == 1);
        const std::size_t wall = index(layout.hearth_wall.solids[0]);
        std::size_t touches = 0;
        for (const Touch& touch : shop.builder.network.passages[*layout.tunnel].law->touches())
            if (touch.solid == wall) {
                ++touches;
                CHECK(touch.gas_cell == 0);
            }
        CHECK(touches == 1);
        Stove stove = plain_stove();
        stove.feed->foot_lining.clear();
        Workshop without(stove);
        build_to_tunnel(without);
        CHECK(without.builder.layout.hearth_wall.solids.empty());
    }

    TEST_CASE("roof and sides of each stretch see each other, and no more than the roof shows") {
        Workshop shop;
        build_to_tunnel(shop);
        std::size_t seen = 0;
        for (const RadiationEnclosure& enclosure : shop.builder.network.enclosures) {
            if (!enclosure.name.starts_with("tunnel.")) continue;
            ++seen;
            REQUIRE(enclosure.exchange_area.size() == 4);
            CHECK(enclosure.exchange_area[1] == enclosure.exchange_area[2]);
            CHECK(enclosure.exchange_area[1] > 0);
            CHECK(enclosure.exchange_area[1] < 0.125 * 0.085);
        }
        CHECK(seen == 4);
    }

    TEST_CASE("a narrower port costs more, both ways, but a port as wide as the tunnel little") {
        Stove stove = plain_stove();
        double last = 0;
        for (const double width : {0.125, 0.09, 0.06, 0.03}) {
            stove.port->width = width;
            const double loss = tunnel_loss(stove, 0.01);
            CHECK(loss > last);
            CHECK(tunnel_loss(stove, -0.01) < -last);
            last = loss;
        }
        // A quarter of the width: far more than port and bend together cost at nearly the whole.
        stove.port->width = 0.12;
        CHECK(last > 5 * tunnel_loss(stove, 0.01));
        stove.port.reset();
        CHECK(tunnel_loss(stove, 0.01) < last / 5);
    }

    TEST_CASE("a larger firebox ends at a ledge, with walls of its own size up to it") {
        Stove stove = plain_stove();
        Tunnel& tunnel = *stove.tunnel;
        tunnel.firebox_length = 0.17;
        tunnel.firebox_width = 0.16;
        tunnel.firebox_height = 0.14;
        Workshop shop(stove);
        build_to_tunnel(shop);
        const Layout& layout = shop.builder.layout;
        REQUIRE(layout.tunnel_wall.position.size() == 4);
        const std::vector<double> ends = layout.tunnel_wall.ends(0);
        CHECK(ends[2] == near(0.17, 1e-9));
        CHECK(ends[4] == near(0.34, 1e-9));
        CHECK(shop.mass("tunnel.wall") ==
              near(2000 * 0.064 * 0.17 * (0.16 + 0.28 + 0.125 + 0.22), 1e-9));
        CHECK(shop.mass("feed.foot") == near(2000 * 0.064 * (0.125 + 0.11) * 0.14, 1e-9));

        // Narrowing costs half the share of the section that the ledge covers, widening the square
        // of it, on the tunnel's velocity.
        constexpr double flow = 0.05, area = 0.125 * 0.11, firebox = 0.16 * 0.14;
        const double density =
            shop.builder.gas.model->mixture(dry_air()).density(900, shop.stove.site.pressure);
        const double head = 0.5 * density * std::pow(flow / (density * area), 2);
        const double covered = 1 - area / firebox;
        const double narrowing = tunnel_loss(stove, flow) - tunnel_loss(plain_stove(), flow);
        // Slow flow adds 500 over Re, some 14000: 0.03 heads. The wider duct rubs less, 0.02.
        CHECK(narrowing / head == doctest::Approx(0.5 * covered + 0.01).epsilon(0.15));
        const double widening = tunnel_loss(plain_stove(), -flow) - tunnel_loss(stove, -flow);
        CHECK(widening / head == doctest::Approx(covered * covered + 0.01).epsilon(0.2));
    }

    TEST_CASE("ash under the fire narrows the gas's way there, and fills no duct") {
        Stove stove = plain_stove();
        const double clean = tunnel_loss(stove, 0.01);
        stove.tunnel->ash = 0.05;
        const double fouled = tunnel_loss(stove, 0.01);
        CHECK(fouled > clean);
        stove.tunnel->ash = 0.2;  // deeper than the tunnel is high
        const double full = tunnel_loss(stove, 0.01);
        CHECK(full > fouled);
        CHECK(std::isfinite(full));
        // It lies as far as the fire does: half the feed's depth of 110 mm, in the first cell.
        Workshop shop(stove);
        build_to_tunnel(shop);
        const auto& law = dynamic_cast<const GasPassage&>(
            *shop.builder.network.passages[*shop.builder.layout.tunnel].law);
        CHECK(law.shape().cells[0].floor == near(0.125 * 0.055 / 0.085, 1e-9));
        CHECK(law.shape().cells[1].floor == 0);
    }

    TEST_CASE("without a tunnel the riser stands on the hearth") {
        Stove stove = plain_stove();
        stove.tunnel.reset();
        Workshop shop(stove);
        build_to_tunnel(shop);
        CHECK(shop.builder.layout.riser_foot == shop.builder.layout.hearth);
        CHECK_FALSE(shop.builder.layout.tunnel);
    }

    TEST_CASE("an insert that narrows the port by half costs a sharp opening of half its area") {
        constexpr double flow = 0.05, port = 0.09 * 0.11, tunnel = 0.125 * 0.11,
                         riser = constants::pi / 4 * 0.125 * 0.125;
        Stove stove = plain_stove();
        const double open = tunnel_loss(stove, flow);
        stove.schedule.port = Steps(0.5);
        Workshop shop(stove);
        build_to_tunnel(shop);
        const double narrowed =
            Crossed(*shop.builder.network.passages[*shop.builder.layout.tunnel].law, flow, 900, 900,
                    *shop.builder.gas.model, shop.builder.network.solids.size(),
                    shop.builder.network.settings)
                .crossing.loss;
        const double density =
            shop.builder.gas.model->mixture(dry_air()).density(900, shop.stove.site.pressure);
        const double head = 0.5 * density * std::pow(flow / (density * port), 2);
        const double by_hand = 4 * port_loss(port / 2 / tunnel, port / 2 / riser) -
                               port_loss(port / tunnel, port / riser);
        // Slow flow adds 500 over Re, some 14000 here: 0.03 and four times 0.02 of about 4 heads.
        CHECK(narrowed - open == near(by_hand * head, 0.03));
    }
}

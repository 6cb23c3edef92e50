#include <doctest/doctest.h>

#include "models/components/duct_shape.h"
#include "models/components/parts.h"
#include "models/laws/losses.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

using constants::pi;

void build(Workshop& shop) {
    add_feed(shop.builder);
    add_tunnel(shop.builder);
    add_riser(shop.builder);
    add_plate(shop.builder);
    add_barrel(shop.builder);
    add_flue(shop.builder);
}

double loss(const Workshop& shop, std::size_t section, double flow) {
    const std::size_t passage = shop.builder.layout.flue[section];
    return Crossed(*shop.builder.network.passages[passage].law, flow, 500, 500,
                   *shop.builder.gas.model, shop.builder.network.solids.size())
        .crossing.loss;
}

double head(const Workshop& shop, double bore, double flow) {
    const double density =
        shop.builder.gas.model->mixture(dry_air()).density(500, shop.stove.site.pressure);
    const double speed = flow / (density * pi / 4 * bore * bore);
    return 0.5 * density * speed * speed;
}

}  // namespace

TEST_SUITE("models/components/flue") {
    TEST_CASE("the gas path closes: what it rises is the flue top over the feed's mouth") {
        for (const double outlet : {0.03, 0.075, 0.25}) {
            Stove stove = plain_stove();
            stove.flue.outlet = outlet;
            Workshop shop(stove);
            build(shop);
            const Layout& layout = shop.builder.layout;
            double rise = 0;
            for (const auto& p :
                 {layout.feed, layout.tunnel, layout.riser, layout.turn, layout.annulus})
                rise += rise_of(shop.builder, p.value());
            for (const std::size_t p : layout.flue) rise += rise_of(shop.builder, p);
            CHECK(rise == near(0.77 - 0.62 + outlet + 2.2 - 0.24, 1e-9));
        }
    }

    TEST_CASE("each section has its length of wall, the sections following one another") {
        Workshop shop;
        build(shop);
        const Layout& layout = shop.builder.layout;
        const double outer = 0.0625 + 0.0005, inner = 0.0625;
        const double section = 7850 * pi * (outer * outer - inner * inner);
        CHECK(shop.mass("flue.level.") == near(section * 0.3, 1e-9));
        CHECK(shop.mass("flue.stack.") == near(section * 2.2, 1e-9));
        CHECK(layout.flue_gas_way.front() == near(0.075, 1e-9));  // two cells in 0.3 m
        CHECK(layout.flue_gas_way.back() < 2.5);
        CHECK(layout.flue_gas_way.size() == layout.flue_wall.solids.size());
        const auto& passages = shop.builder.network.passages;
        CHECK(passages[layout.flue[0]].to == passages[layout.flue[1]].from);
        CHECK(passages[layout.flue[1]].to == layout.terminal);
        CHECK(shop.builder.network.junctions[index(layout.terminal)].boundary);
    }

    TEST_CASE("a section outdoors starts cold and loses its heat there") {
        Stove stove = plain_stove();
        stove.flue.sections[1].outdoors = true;
        Workshop shop(stove);
        build(shop);
        CHECK_FALSE(shop.face("flue.level")->outdoors);
        CHECK(shop.face("flue.stack")->outdoors);
        for (const Solid& solid : shop.builder.network.solids) {
            if (solid.name.starts_with("flue.stack."))
                CHECK(solid.initial_temperature == stove.site.outdoor(0));
            if (solid.name.starts_with("flue.level."))
                CHECK(solid.initial_temperature == stove.site.room);
        }
    }

    TEST_CASE("the gas pays to enter, to turn, to leave and for a cap") {
        Stove stove = plain_stove();
        for (FlueSection& section : stove.flue.sections) section.length = 0.001;
        stove.flue.sections[1].rise = 0.001;
        Workshop shop(stove);
        build(shop);
        const double flow = 0.2, unit = head(shop, 0.125, flow);
        // A millimetre of duct rubs little; slow flow adds 500 over Re of about 76 000.
        CHECK(loss(shop, 0, flow) / unit == doctest::Approx(entrance_loss()).epsilon(0.03));
        CHECK(loss(shop, 0, -flow) / unit == doctest::Approx(-exit_loss()).epsilon(0.03));
        // The bend is mended by slow flow's factor, at Re 76 000 in air of 500 K.
        const double bend = mitre_bend_loss(pi / 2) * slow_bend_factor(76e3);
        CHECK(loss(shop, 1, flow) / unit == doctest::Approx(bend + exit_loss()).epsilon(0.03));
        CHECK(loss(shop, 1, -flow) / unit ==
              doctest::Approx(-bend - entrance_loss()).epsilon(0.03));

        stove.flue.cap_loss = 0.8;
        Workshop capped(stove);
        build(capped);
        CHECK((loss(capped, 1, flow) - loss(shop, 1, flow)) / unit == near(0.8, 1e-6));
        CHECK((loss(capped, 1, -flow) - loss(shop, 1, -flow)) / unit == near(-0.8, 1e-6));
    }

    TEST_CASE("a tee stands in place of the bend, whatever its angle, and adds to an entry") {
        Stove stove = plain_stove();
        for (FlueSection& section : stove.flue.sections) section.length = 0.001;
        stove.flue.sections[1].rise = 0.001;
        const double flow = 0.2, unit = head(Workshop(stove), 0.125, flow);
        for (const double angle : {0.0, pi / 2}) {
            stove.flue.sections[1].entry_angle = angle;
            stove.flue.sections[1].tee = true;
            Workshop shop(stove);
            build(shop);
            // As a bend's it is mended by slow flow's factor, at Re 76 000 in air of 500 K.
            const double tee = tee_side_loss() * slow_bend_factor(76e3);
            CHECK(loss(shop, 1, flow) / unit == doctest::Approx(tee + exit_loss()).epsilon(0.03));
            CHECK(loss(shop, 1, -flow) / unit ==
                  doctest::Approx(-tee - entrance_loss()).epsilon(0.03));
        }
        Workshop plain(stove);
        build(plain);
        stove.flue.sections[0].tee = true;
        Workshop first(stove);
        build(first);
        CHECK((loss(first, 0, flow) - loss(plain, 0, flow)) / unit ==
              doctest::Approx(tee_side_loss() * slow_bend_factor(76e3)).epsilon(0.02));
    }

    TEST_CASE("without a flue an octagonal riser ends in an opening of its own section") {
        Stove stove = plain_stove();
        stove.flue.sections.clear();
        Workshop round(stove);
        build(round);
        stove.riser.octagonal = true;
        Workshop eight(stove);
        build(eight);
        const double ratio = octagonal_section(1).area / round_section(1).area;
        // The loss goes with the square of the speed; slow flow's part is 500 / Re of 76 000.
        CHECK(loss(round, 0, 0.2) / loss(eight, 0, 0.2) ==
              doctest::Approx(ratio * ratio).epsilon(1e-3));
    }

    TEST_CASE("a change of bore costs what the narrow side pays, whichever way the gas goes") {
        Stove stove = plain_stove();
        for (FlueSection& section : stove.flue.sections) section.length = 0.001;
        stove.flue.sections[1].rise = 0.001;
        stove.flue.sections[1].entry_angle = 0;
        const double flow = 0.2, ratio = 0.125 * 0.125 / (0.15 * 0.15);
        const auto change = [&](double first, double second, double way) {
            stove.flue.sections[0].bore = first;
            stove.flue.sections[1].bore = second;
            Workshop shop(stove);
            build(shop);
            const double end = way > 0 ? exit_loss() : entrance_loss();
            return way * loss(shop, 1, way * flow) / head(shop, 0.125, flow) -
                   end * head(shop, second, flow) / head(shop, 0.125, flow);
        };
        const double widening = sudden_expansion_loss(ratio),
                     narrowing = sudden_contraction_loss(ratio);
        // In velocity heads of the narrow bore; a millimetre's friction is below 0.01 of them.
        CHECK(std::abs(change(0.125, 0.15, 1) - widening) < 0.01);
        CHECK(std::abs(change(0.125, 0.15, -1) - narrowing) < 0.01);
        CHECK(std::abs(change(0.15, 0.125, 1) - narrowing) < 0.01);
        CHECK(std::abs(change(0.15, 0.125, -1) - widening) < 0.01);
    }

    TEST_CASE("wind on the flue top pushes by its factor") {
        Stove stove = plain_stove();
        stove.site.wind = Table(4);
        stove.site.wind_factor = -0.3;
        Workshop shop(stove);
        build(shop);
        CHECK(shop.builder.network.junctions[index(shop.builder.layout.terminal)].pressure ==
              near(-0.3 * 0.5 * shop.builder.gas.outdoor_density * 16, 1e-9));
    }

    TEST_CASE("without a flue the gas leaves through an opening") {
        Stove stove = plain_stove();
        stove.flue.sections.clear();
        Workshop shop(stove);
        build(shop);
        REQUIRE(shop.builder.layout.flue.size() == 1);
        CHECK(shop.builder.layout.flue_gas_way.empty());
        CHECK(loss(shop, 0, 0.05) > head(shop, 0.125, 0.05));
    }

    TEST_CASE("a damper half shut costs a sharp opening of half the flue, where it sits") {
        // Idelchik's (0.707 sqrt(1/2) + 1/2)^2 is 1 within 1e-3, on four times the flue's head.
        Workshop plain;
        build(plain);
        for (const char* place : {"", "stack"}) {
            Stove stove = plain_stove();
            stove.schedule.damper = Steps({0, 600}, {1, 0.5});
            stove.flue.damper = place;
            Workshop shop(stove);
            build(shop);
            const std::size_t sits = stove.flue.damper.empty() ? 0 : 1;
            std::vector<double> settings = shop.builder.network.settings;
            const auto loss_at = [&](std::size_t section) {
                const std::size_t passage = shop.builder.layout.flue[section];
                return Crossed(*shop.builder.network.passages[passage].law, 0.01, 500, 500,
                               *shop.builder.gas.model, shop.builder.network.solids.size(),
                               settings)
                    .crossing.loss;
            };
            // Open, it stands in the flue and costs nothing.
            for (std::size_t s = 0; s < 2; ++s)
                CHECK(loss_at(s) == near(loss(plain, s, 0.01), 1e-9));
            Surroundings around{std::vector<double>(shop.builder.network.junctions.size()),
                                std::vector<GasState>(shop.builder.network.junctions.size()),
                                settings};
            shop.builder.network.change(600, around);
            settings = around.settings;
            for (std::size_t s = 0; s < 2; ++s)
                CHECK(loss_at(s) - loss(plain, s, 0.01) ==
                      doctest::Approx(s == sits ? 4 * head(shop, 0.125, 0.01) : 0).epsilon(2e-3));
        }
    }
}

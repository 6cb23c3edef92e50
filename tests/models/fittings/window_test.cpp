#include "models/fittings/window.h"

#include <doctest/doctest.h>

#include "models/burn.h"
#include "models/components/fire_view.h"
#include "tests/models/fittings/fitted_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Window window() {
    Window made;
    made.name = "side";
    made.width = 0.12;
    made.height = 0.09;
    made.thickness = 0.004;
    return made;
}

Library glazed_library() {
    Library library = plain_library();
    library.materials["ceramic_glass"] = plain_material(2560, 1.6, 900, 0.85);
    return library;
}

Stove stove_with(const std::vector<Window>& windows) {
    Stove stove = fitted_stove(windows);
    stove.heat_source = Table(8e3);
    stove.burn.duration = 3600;
    return stove;
}

}  // namespace

TEST_SUITE("models/fittings/window") {
    TEST_CASE("the share of a black body's radiation is that of the tables") {
        // Planck's integral at 2000, 2898 and 4000 um K: 0.0667, 0.2501, 0.4809 (Siegel and
        // Howell, from memory).
        CHECK(black_share_below(2e-6, 1000) == near(0.0667, 2e-3));
        CHECK(black_share_below(2.898e-6, 1000) == near(0.2501, 2e-3));
        CHECK(black_share_below(4e-6, 1000) == near(0.4809, 2e-3));
        CHECK(black_share_below(1, 1000) == near(1, 1e-3));
    }

    TEST_CASE("a pane is dark to a warm room and lets a third of a white glow through") {
        CHECK(let_through(293) < 1e-3);
        CHECK(let_through(800) > 0.1);
        CHECK(let_through(800) < 0.25);
        CHECK(let_through(1400) > 0.4);
        double before = 0;
        for (double t = 300; t < 2000; t += 100) {
            CHECK(let_through(t) > before);
            before = let_through(t);
        }
    }

    TEST_CASE("a pane stands in place of lining") {
        const Library library = glazed_library();
        Stove stove = stove_with({window()});
        StoveBuilder builder(stove, library, plain_fuel());
        add_feed(builder);
        add_tunnel(builder);
        add_riser(builder);
        const auto face = [&](std::string_view name) {
            for (const OutsideFace& outside : builder.network.outside)
                if (outside.name == name) return sum_of(outside.area);
            return 0.0;
        };
        const auto touched = [&] {
            double sum = 0;
            for (const GasCellShape& cell :
                 static_cast<const GasPassage&>(
                     *builder.network.passages[*builder.layout.tunnel].law)
                     .shape()
                     .cells)
                for (const WallFace& each : cell.faces) sum += each.area;
            return sum;
        };
        const double sides = face("tunnel"), inside = touched();
        add_fittings(builder);
        CHECK(face("tunnel") == near(sides - 0.12 * 0.09, 1e-9));
        CHECK(face("window.side") == near(0.12 * 0.09, 1e-9));
        CHECK(touched() == near(inside, 1e-9));
        // The wall across shines through: 56.7 kW/m2 of a black body at 1000 K.
        for (const OutsideFace& outside : builder.network.outside)
            if (outside.name == "window.side.light") {
                const double glowing = 1000;
                double flux = 0;
                outside.flux(0, std::span(&glowing, 1), std::span(&flux, 1));
                CHECK(flux == near(let_through(1000) * 56.7e3, 2e-3));
            }
        // The fire sees the pane instead of that part of the wall.
        const FireView view = hearth_view(builder);
        double seen = view.open(), pane = 0;
        for (const auto& [solid, share] : view.faces()) {
            seen += share;
            if (builder.network.solids[solid].name.starts_with("window")) pane += share;
        }
        CHECK(seen == near(1, 1e-9));
        CHECK(pane > 0.01);
        CHECK(pane < 0.2);
    }

    TEST_CASE("a window cools the firebox, glows into the room, and the books close") {
        const BurnOutcome without = run_burn(stove_with({}), glazed_library());
        const BurnOutcome with = run_burn(stove_with({window()}), glazed_library());
        CHECK(with.summary.energy_residual < 1e-3);
        REQUIRE(with.summary.fittings.size() == 2);
        CHECK(*with.summary.fittings[0].value > 400);
        CHECK(*with.summary.fittings[1].value > 0);
        CHECK(with.summary.heat_to_room > without.summary.heat_to_room);
        const auto firebox = [](const BurnOutcome& outcome) {
            return outcome.results.find("tunnel_wall_temperature")->values.back();
        };
        CHECK(firebox(with) < firebox(without));
    }

    TEST_CASE("a window larger than its side is refused, and so is one without a tunnel") {
        Window high = window(), wide = window();
        high.height = 0.2;
        wide.width = 0.3;
        CHECK(problems(high, plain_stove()).size() == 1);
        CHECK(problems(wide, plain_stove()).size() == 1);
        CHECK(problems(window(), plain_stove()).empty());
        Stove bare = plain_stove();
        bare.tunnel.reset();
        CHECK(problems(window(), bare).size() == 1);
    }
}

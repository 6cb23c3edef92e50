#include "models/fire/fuel_site.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/errors.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

double black(double temperature) {
    return constants::stefan_boltzmann * std::pow(temperature, 4);
}

/// Two walls, and two tenths of the view open.
FuelSite half_open() {
    FuelSite site;
    site.view.add(0, 0.5);
    site.view.add(1, 0.3);
    site.beam_length = 0.1;
    site.width = 0.12;
    return site;
}

}  // namespace

TEST_SUITE("models/fire/fuel_site") {
    TEST_CASE("a face joins the view with its share, and what none fills is open") {
        FireView view;
        CHECK(view.open() == 1);
        view.add(4, 0.5);
        view.add(7, 0.2);
        view.add(4, 0.1);
        view.add(9, 0);
        CHECK(view.open() == near(0.2, 1e-12));
        REQUIRE(view.faces().size() == 2);
        CHECK(view.faces()[0].first == 4);
        CHECK(view.faces()[0].second == near(0.6, 1e-12));
        CHECK_THROWS_AS(view.add(8, 0.21), SolverError);
        CHECK_THROWS_AS(view.add(8, -0.01), SolverError);
    }

    TEST_CASE("each wall counts by its share of the view, and the open not at all") {
        const std::vector<double> walls{1000, 800};
        CHECK(wall_flux(half_open().view, walls) ==
              near(0.5 * black(1000) + 0.3 * black(800), 1e-12));
    }

    TEST_CASE("a flame between wood and walls hides the walls and shines itself") {
        const FuelSite site = half_open();
        const BedConstants bed = plain_bed();
        const double walls = 0.5 * black(1000) + 0.3 * black(800);
        const double hidden = 1 - std::exp(-0.8 * 0.1);
        const SeenFlux clear = seen_flux(site, bed, 0, 0, std::vector<double>{1000, 800});
        CHECK(clear.walls == near(0.9 * walls, 1e-12));
        CHECK(clear.fire == 0);
        const SeenFlux flaming = seen_flux(site, bed, 0, 1, std::vector<double>{1000, 800});
        CHECK(flaming.walls == near(0.9 * walls * (1 - hidden), 1e-12));
        CHECK(flaming.fire == near(0.9 * hidden * black(1373.15), 1e-12));
        CHECK(flaming.all() == flaming.walls + flaming.fire);
        // Walls all round as hot as the flame: no difference.
        FuelSite closed = site;
        closed.view.add(2, 0.2);
        const std::vector<double> hot(3, 1373.15);
        CHECK(seen_flux(closed, bed, 0, 1, hot).all() ==
              near(seen_flux(closed, bed, 0, 0, hot).all(), 1e-12));
    }

    TEST_CASE("embers fill up to their share of the view, half of it with half a bed") {
        const FuelSite site = half_open();
        const BedConstants bed = plain_bed();
        const std::vector<double> cold{0, 0};
        CHECK(seen_flux(site, bed, 0.025, 0, cold).fire == near(0.9 * 0.15 * black(900), 1e-12));
        CHECK(seen_flux(site, bed, 10, 0, cold).fire == near(0.9 * 0.3 * black(900), 0.01));
        CHECK(seen_flux(site, bed, -1e-9, 0, cold).fire == 0);
    }

    TEST_CASE("burning wood draws only what walls send over what it sends back") {
        const FuelSite site = half_open();
        const BedConstants bed = plain_bed();
        const double net = 0.8 * black(1000) - black(pyrolysis_temperature);
        CHECK(heat_from_walls(site, bed, 0.05, 1, std::vector<double>{1000, 1000}) ==
              near(0.05 * 0.9 * std::exp(-0.08) * net, 1e-9));
        CHECK(heat_from_walls(site, bed, 0.05, 1, std::vector<double>{600, 600}) == 0);
    }

    TEST_CASE("walls share the embers' glow by view, and pay for what is drawn by what they send") {
        const FuelSite site = half_open();
        std::vector<double> heat{10, 20};
        share_out(site.view, plain_bed(), 800, 0, std::vector<double>{300, 300}, heat);
        CHECK(heat[0] == near(10 + 500, 1e-12));
        CHECK(heat[1] == near(20 + 300, 1e-12));
        const std::vector<double> walls{1000, 800};
        heat = {0, 0};
        share_out(site.view, plain_bed(), 0, 700, walls, heat);
        CHECK(sum_of(heat) == near(-700, 1e-12));
        CHECK(heat[0] / heat[1] == near(0.5 * black(1000) / (0.3 * black(800)), 1e-12));
    }

    TEST_CASE("a hot wall takes less of the embers' glow, and none at the flame's temperature") {
        const FuelSite site = half_open();
        const BedConstants bed = plain_bed();
        const double flame = bed.flame_temperature.value;
        std::vector<double> heat{0, 0};
        share_out(site.view, bed, 800, 0, std::vector<double>{1000, 300}, heat);
        CHECK(sum_of(heat) == near(800, 1e-12));
        CHECK(heat[0] / heat[1] < 5.0 / 3);
        CHECK(glow_share(site.view, bed, std::vector<double>{flame, flame}) == 0);
        CHECK(glow_share(site.view, bed, std::vector<double>{0, 0}) == near(0.8, 1e-12));
    }
}

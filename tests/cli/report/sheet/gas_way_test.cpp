#include "cli/report/sheet/gas_way.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "tests/cli/report/sheet/sheet_stoves.h"

using namespace drawwell;
using namespace drawwell::tests;
using constants::pi;

namespace {

double share(const Stove& stove, std::string_view name) {
    for (const GasArea& area : gas_areas(stove))
        if (area.name == name) return area.share;
    return -1;
}

BuildUp oven_wall(const Stove& stove) {
    for (const Fitting& fitting : stove.fittings)
        if (const auto* oven = std::get_if<OvenTube>(&fitting)) return oven->wall;
    return {};
}

}  // namespace

TEST_SUITE("cli/report/sheet/gas_way") {
    TEST_CASE("shares of the allotment kitchen are those worked out by hand") {
        const Stove stove = sample_stove("allotment-kitchen");
        const double bore = pi / 4 * 0.125 * 0.125;
        CHECK(share(stove, "riser") == doctest::Approx(1));
        CHECK(share(stove, "tunnel") == doctest::Approx(0.110 * 0.110 / bore));
        CHECK(share(stove, "port") == doctest::Approx(0.070 * 0.110 / bore));
        // A cylinder as wide as the bore and 45 mm high.
        CHECK(share(stove, "opening under the plate") == doctest::Approx(4 * 0.045 / 0.125));
        CHECK(share(stove, "space round the riser") ==
              doctest::Approx((0.3976 * 0.3976 - 0.177 * 0.177) / (0.125 * 0.125)));
        const auto areas = gas_areas(stove);
        CHECK(narrowest(areas)->name == "port");
    }

    TEST_CASE("corners of an octagon or a square riser count in the space round it") {
        const Stove round = sample_stove("workshop");
        const Stove octagon = sample_stove("workshop", {"riser.section=octagonal"});
        const double space_round = share(round, "space round the riser") * pi / 4;
        const double eight = 8 * std::tan(pi / 8) / 4;
        const double space_eight = share(octagon, "space round the riser") * eight;
        const double skin = 0.302 * 0.302 / (0.2 * 0.2);
        CHECK(space_round - space_eight == doctest::Approx((eight - pi / 4) * skin).epsilon(1e-3));
    }

    TEST_CASE("a grid and an oven tube narrow the way where they are") {
        const Stove window = sample_stove("kitchen-window");
        const double open = (1 - 3.0 / 18) * (1 - 3.0 / 18);  // 3 mm of wire in 18
        CHECK(share(window, "through the grid, embers") ==
              doctest::Approx(open * share(window, "tunnel")));
        const Stove kitchen = sample_stove("workshop-kitchen");
        // Half-way between 151 and 283.8 mm, its chord through the barrel is 367 mm long.
        const double chord = 2 * std::sqrt(0.2838 * 0.2838 - 0.2174 * 0.2174);
        const double wide = 0.120 + 2 * thickness(oven_wall(kitchen));
        CHECK(share(kitchen, "space round the riser") -
                  share(kitchen, "past the oven tube, bread") ==
              doctest::Approx(chord * wide / (pi / 4 * 0.04)));
    }

    TEST_CASE("side air is told beside the main way and never its narrowest place") {
        for (std::uint32_t i = 0; i < 60; ++i) {
            const auto stove = made_up_stove(i);
            if (!stove) continue;
            const auto areas = gas_areas(*stove);
            REQUIRE(narrowest(areas));
            CHECK_FALSE(narrowest(areas)->aside);
            for (const GasArea& area : areas) {
                CHECK(area.area > 0);
                if (!area.aside) CHECK(area.area >= narrowest(areas)->area);
            }
            for (const GasVolume& part : gas_volumes(*stove)) CHECK(part.volume > 0);
        }
    }

    TEST_CASE("a flue's volume is its section times its length") {
        const auto parts = gas_volumes(sample_stove("allotment-kitchen"));
        CHECK(parts.back().name == "flue, stack");
        CHECK(parts.back().volume == doctest::Approx(pi / 4 * 0.125 * 0.125 * 2.2));
    }
}

#include "cli/report/web/heat_colour.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <string>

using namespace drawwell;

namespace {

/// Relative luminance of `#rrggbb` (WCAG 2.1).
double luminance(std::string_view colour) {
    constexpr double share[] = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (std::size_t c = 0; c < 3; ++c) {
        const double part =
            std::stoi(std::string(colour.substr(1 + 2 * c, 2)), nullptr, 16) / 255.0;
        sum += share[c] * (part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4));
    }
    return sum;
}

}  // namespace

TEST_SUITE("cli/report/web/heat_colour") {
    TEST_CASE("the hotter, the lighter, so that the order shows to eyes that see no hues") {
        double last = -1;
        for (double celsius = 0; celsius <= 1200; celsius += 20) {
            const double light = luminance(heat_colour(celsius));
            INFO(celsius);
            CHECK(light > last);
            last = light;
        }
        for (std::size_t i = 1; i < cooking_bands.size(); ++i) {
            // 1.2: steps that stand side by side are told apart.
            CHECK((luminance(cooking_bands[i].colour) + 0.05) /
                      (luminance(cooking_bands[i - 1].colour) + 0.05) >
                  1.2);
        }
    }

    TEST_CASE("beyond the scale its ends stay, and no number is grey") {
        CHECK(heat_colour(-40) == heat_colour(0));
        CHECK(heat_colour(3000) == heat_colour(1200));
        CHECK(heat_colour(0) == "#16213a");
        CHECK(heat_colour(std::numeric_limits<double>::quiet_NaN()) == "#808080");
    }

    TEST_CASE("a band begins where it is named from") {
        CHECK(cooking_band(20) == 0);
        CHECK(cooking_bands[cooking_band(60)].name == "keeps warm");
        CHECK(cooking_bands[cooking_band(174.9)].name == "simmers");
        CHECK(cooking_bands[cooking_band(175)].name == "fries");
        CHECK(cooking_band(900) == cooking_bands.size() - 1);
        CHECK(cooking_band(std::numeric_limits<double>::quiet_NaN()) == 0);
    }
}

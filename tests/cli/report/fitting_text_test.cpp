#include "cli/report/fitting_text.h"

#include <doctest/doctest.h>

using namespace drawwell;

TEST_SUITE("cli/report/fitting_text") {
    TEST_CASE("figures carry their unit in their key, and stand in it") {
        const auto figure = [](std::string_view unit, double value) {
            return fitting_figure({"x", "", unit, value});
        };
        CHECK(figure("s", 90) == std::pair<std::string, double>("x_s", 90));
        CHECK(figure("kg", 2) == std::pair<std::string, double>("x_kg", 2));
        CHECK(figure("J", 3e6) == std::pair<std::string, double>("x_mj", 3));
        CHECK(figure("1", 0.5) == std::pair<std::string, double>("x", 0.5));
        CHECK(figure("K", 373.15).first == "x_c");
        CHECK(figure("K", 373.15).second == doctest::Approx(100));
    }

    TEST_CASE("the page says them as people do, and what never happened in words") {
        const auto text = [](std::string_view unit, std::optional<double> value) {
            return fitting_text({"x", "", unit, value});
        };
        CHECK(text("s", 1320) == "22 min");
        CHECK(text("K", 373.15) == "100 °C");
        CHECK(text("kg", 0.5) == "0.50 kg");
        CHECK(text("J", 3.2e6) == "3.20 MJ");
        CHECK(text("1", 0.69) == "69 %");
        CHECK(text("s", {}) == "never in this burn");
    }
}

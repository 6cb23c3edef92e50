#include "cli/report/web/page_panels.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace drawwell;

namespace {

Results made_up() {
    Results results;
    results.time = {0, 60};
    results.axes = {{"plate_radius", "m", "ring", {0.02, 0.06, 0.1, 0.14, 0.18, 0.2, 0.205}},
                    {"riser_cell", "m", "height", {0.1, 0.3, 0.5}}};
    results.columns = {
        {"drive", "Pa", "drive", "", 1, {2, 6}},
        {"buoyancy_feed", "Pa", "feed", "", 1, {0, 0}},
        {"air_ratio", "1", "air", "", 1, {99, 4}},
        {"heat_release", "W", "heat", "", 1, {0, 5000}},
        {"riser_gas_temperature", "K", "gas", "riser_cell", 3, {300, 301, 302, 900, 901, 902}},
        {"plate_temperature", "K", "plate", "plate_radius", 7, std::vector<double>(14, 400)}};
    return results;
}

const ShownPanel* panel_of(const std::vector<PagePanel>& panels, std::string_view id) {
    for (const PagePanel& panel : panels)
        if (panel.id == id) return &panel.shown;
    return nullptr;
}

}  // namespace

TEST_SUITE("cli/report/web/page_panels") {
    TEST_CASE("a page has figures of what the burn has, in the units of the trade") {
        const auto panels = page_panels(made_up());
        CHECK(panels.size() == 5);
        CHECK(panel_of(panels, "barrel") == nullptr);
        const ShownPanel* heat = panel_of(panels, "heat");
        REQUIRE(heat);
        CHECK(heat->unit == "kW");
        CHECK(heat->series[0].values == std::vector<double>{0, 5});
        CHECK(page_panels(Results{}).empty());
    }

    TEST_CASE("lines that are nothing all along are left out") {
        const auto panels = page_panels(made_up());
        const ShownPanel* pull = panel_of(panels, "pull");
        REQUIRE(pull);
        REQUIRE(pull->series.size() == 1);
        CHECK(pull->series[0].label == "all together");
    }

    TEST_CASE("foot and top of a part are its own ends") {
        const auto panels = page_panels(made_up());
        const ShownPanel* path = panel_of(panels, "path");
        REQUIRE(path);
        CHECK(path->series[0].label == "riser, foot");
        CHECK(path->series[0].values[1] == doctest::Approx(900 - 273.15));
        CHECK(path->series[1].values[1] == doctest::Approx(902 - 273.15));
    }

    TEST_CASE("the plate shows its innermost ring and its rim, six rings at most") {
        const auto panels = page_panels(made_up());
        const ShownPanel* plate = panel_of(panels, "plate");
        REQUIRE(plate);
        CHECK(plate->series.size() == 6);
        CHECK(plate->series.front().label == "20 mm from the centre, innermost");
        CHECK(plate->series.back().label == "205 mm from the centre, rim");
    }

    TEST_CASE("the air ratio has a gap where nothing burns") {
        const auto panels = page_panels(made_up());
        const ShownPanel* air = panel_of(panels, "air");
        REQUIRE(air);
        CHECK(std::isnan(air->series[0].values[0]));
        CHECK(air->series[0].values[1] == 4);
    }
}

#include <doctest/doctest.h>

#include "cli/read/embedded_data.h"
#include "cli/read/stove_draft.h"
#include "solver/constants.h"
#include "tests/cli/read/small_stove.h"

using namespace drawwell;

// The figures are the samples' own, invented by the project.
TEST_SUITE("data/stoves") {
    TEST_CASE("the allotment kitchen reads as it was laid down") {
        const auto text = embedded_data("stoves/allotment-kitchen.toml");
        CHECK(text.find("# Invented by the project, not a built stove") == 0);
        const Stove stove = tests::read(text);
        CHECK(stove.feed->mouth == doctest::Approx(0.24));
        CHECK(stove.tunnel->length == doctest::Approx(0.34));
        CHECK(stove.port->width * stove.port->height == doctest::Approx(0.07 * 0.11));
        CHECK(stove.side_air.at(0).area == doctest::Approx(660e-6));
        CHECK(stove.side_air.at(0).height == doctest::Approx(0.055));
        CHECK(stove.riser.bore + 2 * thickness(stove.riser.lining) == doctest::Approx(0.177));
        CHECK(stove.barrel_foot() == doctest::Approx(0.15));
        CHECK(stove.plate->underside - stove.riser.top == doctest::Approx(0.045));
        CHECK(stove.barrel_foot() + stove.flue.outlet == doctest::Approx(0.225));
        REQUIRE(stove.flue.sections.size() == 2);
        CHECK(stove.flue.sections[0].name == "level");
        CHECK(stove.flue.sections[0].entry_angle == 0);
        CHECK(stove.flue.sections[1].rise == doctest::Approx(2.2));
        CHECK(stove.flue.sections[1].entry_angle == doctest::Approx(constants::pi / 2));
        REQUIRE(stove.loads.size() == 2);
        CHECK(stove.loads[0].times == std::vector<double>{480});
        CHECK(stove.loads[1].times == std::vector<double>{960, 2400, 3840, 5280, 6720, 8160});
        CHECK(stove.loads[1].mass == doctest::Approx(0.73));
        CHECK(stove.loads[1].moisture_wet_basis == doctest::Approx(0.16));
        CHECK(stove.site.wind(0) == 2);
        CHECK(stove.site.pressure < 100000);
        CHECK(stove.site.room == doctest::Approx(279.15));
    }

    TEST_CASE("the workshop reads as it was laid down") {
        const auto text = embedded_data("stoves/workshop.toml");
        CHECK(text.find("# Invented by the project, not a built stove") == 0);
        const Stove stove = tests::read(text);
        CHECK(stove.riser.bore + 2 * thickness(stove.riser.lining) == doctest::Approx(0.302));
        CHECK(stove.barrel_foot() == doctest::Approx(0.27));
        CHECK(stove.barrel_foot() + stove.flue.outlet == doctest::Approx(0.385));
        REQUIRE(stove.flue.sections.size() == 1);
        CHECK(stove.flue.sections[0].name == "stack");
        CHECK(stove.flue.sections[0].rise == doctest::Approx(5.5));
        CHECK(stove.feed->mouth == doctest::Approx(0.36));
        CHECK(stove.tunnel->length == doctest::Approx(0.5));
        CHECK(stove.port->width == doctest::Approx(0.115));
        CHECK(stove.side_air.at(0).area == doctest::Approx(0.175 * 0.009));
        CHECK(stove.plate->diameter == doctest::Approx(0.6));
        CHECK(stove.plate->thickness == doctest::Approx(0.008));
        CHECK_FALSE(stove.flue.sections[0].outdoors);
        CHECK(stove.loads.at(1).times == std::vector<double>{1680, 4080, 6480, 8880});
        CHECK(stove.loads.at(1).mass == doctest::Approx(2.97));
        CHECK(stove.site.room_loss == 180);
        CHECK(stove.kindling->mass == doctest::Approx(0.8));
    }
}

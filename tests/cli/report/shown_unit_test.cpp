#include "cli/report/shown_unit.h"

#include <doctest/doctest.h>

using namespace drawwell;

namespace {

constexpr auto us = UnitSystem::us;
constexpr auto metric = UnitSystem::metric;

}  // namespace

TEST_SUITE("cli/report/shown_unit") {
    TEST_CASE("temperatures, lengths and masses are told in the units asked for") {
        CHECK(show_temperature(373.15) == "100 °C");
        CHECK(show_temperature(373.15, us) == "212 °F");
        CHECK(show_length(0.166, metric) == "166 mm");
        CHECK(show_length(0.166, us) == "6 9/16 in");
        CHECK(show_length(0.0062, metric, 1) == "6.2 mm");
        CHECK(show_mass(4.3, metric) == "4.3 kg");
        CHECK(show_mass(4.3, us) == "9.5 lb");
        CHECK(shown_unit("Pa", us).label == "Pa");
        CHECK(shown_unit("J", us).label == "MJ");
        CHECK(shown_unit("K", us).from_si(273.15) == doctest::Approx(32));
    }

    TEST_CASE("a setting is told as it is read off a rule, a change with its sign") {
        CHECK(show_setting(0.3716, Quantity::length, metric) == "371.6 mm");
        CHECK(show_setting(0.3716, Quantity::length, us) == "14 5/8 in");
        CHECK(show_setting(293.15, Quantity::temperature, us) == "68 °F");
        CHECK(show_shift(-0.0508, Quantity::length, us) == "-2 in");
        CHECK(show_shift(0.0508, Quantity::length, us) == "+2 in");
        CHECK(show_shift(0.0508, Quantity::length, metric) == "+50.8 mm");
        // A change of temperature has no zero point of its own.
        CHECK(show_shift(10, Quantity::temperature, us) == "+18 °F");
        CHECK(show_shift(-10, Quantity::temperature, metric) == "-10 K");
    }

    TEST_CASE("degrees within a sentence follow, all else in it stays") {
        CHECK(in_system("fries (175 °C) after", us) == "fries (347 °F) after");
        CHECK(in_system("from 60 °C to 120 °C", us) == "from 140 °F to 248 °F");
        CHECK(in_system("fries (175 °C) after", metric) == "fries (175 °C) after");
        CHECK(in_system("in °C", us) == "in °C");
        CHECK(in_system("", us).empty());
    }
}

#include "cli/read/units.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "solver/constants.h"
#include "solver/errors.h"

using namespace drawwell;

namespace {

double parsed(const char* text, Quantity quantity) {
    return parse_quantity(text, quantity);
}

std::string refusal(const char* text, Quantity quantity) {
    try {
        parse_quantity(text, quantity);
    } catch (const InputError& error) {
        return error.what();
    }
    return "";
}

bool says(const std::string& message, const char* part) {
    return message.find(part) != std::string::npos;
}

// Sums and products of a few doubles: a handful of roundings.
doctest::Approx near(double value) {
    return doctest::Approx(value).epsilon(1e-12);
}

}  // namespace

TEST_SUITE("cli/read/units") {
    TEST_CASE("lengths are read in metric and inch, whole, broken and summed") {
        CHECK(parsed("180 mm", Quantity::length) == near(0.18));
        CHECK(parsed("180mm", Quantity::length) == near(0.18));
        CHECK(parsed("7 1/8 in", Quantity::length) == near(7.125 * 0.0254));
        CHECK(parsed("1/2 in", Quantity::length) == near(0.0127));
        CHECK(parsed("-1 1/2 in", Quantity::length) == near(-0.0381));
        CHECK(parsed("5 ft", Quantity::length) == near(1.524));
        CHECK(parsed("5 ft 4 1/2 in", Quantity::length) == near(64.5 * 0.0254));
        CHECK(parsed("120 m", Quantity::length) == near(120));
        CHECK(parsed("7 1/8 \"", Quantity::length) == near(7.125 * 0.0254));
    }

    TEST_CASE("temperatures are read in Celsius, Fahrenheit and kelvin") {
        CHECK(parsed("20 °C", Quantity::temperature) == near(293.15));
        CHECK(parsed("-20 C", Quantity::temperature) == near(253.15));
        CHECK(parsed("68 °F", Quantity::temperature) == near(293.15));
        CHECK(parsed("-40 °F", Quantity::temperature) == near(233.15));
        CHECK(parsed("293 K", Quantity::temperature) == near(293));
    }

    TEST_CASE("moisture on dry basis becomes a share of the wet mass") {
        CHECK(parsed("16 %", Quantity::moisture) == near(0.16));
        CHECK(parsed("16% wet", Quantity::moisture) == near(0.16));
        CHECK(parsed("25 % dry", Quantity::moisture) ==
              near(0.2));  // 25 g of water on 100 g dry: 25/125
    }

    TEST_CASE("the other quantities are read in their units") {
        CHECK(parsed("300 g", Quantity::mass) == near(0.3));
        CHECK(parsed("1 lb 8 oz", Quantity::mass) == near(1.5 * 0.45359237));
        CHECK(parsed("3.6 kg/h", Quantity::burn_rate) == near(1e-3));
        CHECK(parsed("8 min", Quantity::time) == near(480));
        CHECK(parsed("1 h 30 min", Quantity::time) == near(5400));
        CHECK(parsed("1013 hPa", Quantity::pressure) == near(101300));
        CHECK(parsed("36 km/h", Quantity::speed) == near(10));
        CHECK(parsed("3 kW", Quantity::power) == near(3000));
        CHECK(parsed("180 W/K", Quantity::heat_loss) == near(180));
        CHECK(parsed("60 l", Quantity::volume) == near(0.06));
        CHECK(parsed("55 gal", Quantity::volume) ==
              doctest::Approx(0.2082).epsilon(1e-4));  // a US drum is 208 l
        CHECK(parsed("90 deg", Quantity::angle) == near(constants::pi / 2));
        CHECK(parsed("660 mm2", Quantity::area) == near(660e-6));
        CHECK(parsed("2 cm2", Quantity::area) == near(2e-4));
        CHECK(parsed("0.5 m2 K/W", Quantity::heat_resistance) == near(0.5));
        CHECK(parsed("0.5 m²K/W", Quantity::heat_resistance) == near(0.5));
        CHECK(parsed("60 %", Quantity::share) == near(0.6));
        CHECK(parsed("0.6", Quantity::share) == near(0.6));
        // 10000 BTU/h is 2.93 kW in any table of conversions.
        CHECK(parsed("10000 BTU/h", Quantity::power) == doctest::Approx(2930).epsilon(1e-3));
    }

    TEST_CASE("a missing, unknown or foreign unit is refused with what is accepted") {
        CHECK(refusal("180", Quantity::length) ==
              "the unit is missing; a length is in mm, cm, m, in, ft");
        CHECK(says(refusal("180 mn", Quantity::length), "unknown unit \"mn\""));
        CHECK(says(refusal("180 mn", Quantity::length), "did you mean \"mm\"?"));
        CHECK(refusal("3 kg", Quantity::length) ==
              "kg is a unit of mass; a length is in mm, cm, m, in, ft");
        CHECK(says(refusal("3 mm", Quantity::number), "here stands a plain number"));
    }

    TEST_CASE("what is no finite number is refused") {
        CHECK(says(refusal("nan mm", Quantity::length), "finite"));
        CHECK(says(refusal("inf mm", Quantity::length), "finite"));
        CHECK(says(refusal("1e999 mm", Quantity::length), "out of range"));
        CHECK(says(refusal("1e300 m", Quantity::length), "out of range"));
        CHECK(says(refusal("mm", Quantity::length), "number is missing"));
        CHECK(says(refusal("", Quantity::length), "number is missing"));
        CHECK(says(refusal("2,200 mm", Quantity::length), "comma"));
        CHECK(says(refusal("1/0 in", Quantity::length), "fraction"));
        CHECK(says(refusal("20 °C 5 °C", Quantity::temperature), "one number"));
    }

    TEST_CASE("a formatted quantity reads back to exactly the same value") {
        const Quantity all[] = {Quantity::length,         Quantity::temperature, Quantity::time,
                                Quantity::mass,           Quantity::burn_rate,   Quantity::power,
                                Quantity::pressure,       Quantity::moisture,    Quantity::share,
                                Quantity::angle,          Quantity::area,        Quantity::number,
                                Quantity::heat_resistance};
        double value = 0.0137;
        for (int i = 0; i < 200; ++i) {
            value = std::fmod(value * 7.318 + 0.217, 0.7);
            for (const Quantity quantity : all) {
                INFO(value, " ", format_quantity(value, quantity));
                CHECK(parse_quantity(format_quantity(value, quantity), quantity) == value);
            }
        }
        CHECK(format_quantity(0.18, Quantity::length) == "180 mm");
        CHECK(format_quantity(279.15, Quantity::temperature) == "6 °C");
        CHECK(format_quantity(33 * 1e-6, Quantity::area) == "33 mm2");
        CHECK(show_quantity(0.01, Quantity::area) == "100 cm2");
        CHECK(format_quantity(480, Quantity::time) == "8 min");
        CHECK(format_quantity(10800, Quantity::time) == "3 h");
    }

    TEST_CASE("inches are shown in sixteenths, cancelled down, as a rule has them") {
        CHECK(show_inches(0.0254) == "1 in");
        CHECK(show_inches(0.180) == "7 1/16 in");  // 7.087
        CHECK(show_inches(0.0127) == "1/2 in");
        CHECK(show_inches(0.0254 * (3 + 31.6 / 32)) == "4 in");
        CHECK(show_inches(0) == "0 in");
        CHECK(show_inches(-0.032) == "-1 1/4 in");  // 1.260
    }

    TEST_CASE("sheet is shown in thousandths of an inch and a flue in feet") {
        CHECK(show_inches(0.0012) == "0.047 in");
        CHECK(show_inches(5.5) == "18 ft 0 9/16 in");  // 216.535
        CHECK(show_inches(0.3048 * 10) == "10 ft 0 in");
        CHECK(show_inches(0.3048 * 9.99) == "119 7/8 in");
    }

    TEST_CASE("no length is shown further off than half of a sixteenth") {
        for (int i = 130; i < 3000; ++i) {
            const double length = i * 0.001237;
            const double shown = parse_quantity(show_inches(length), Quantity::length);
            CHECK(std::abs(shown - length) <= 0.0254 / 32 + 1e-9);
        }
    }

    TEST_CASE(
        "the minus and blanks of typeset pages are read, a decimal comma is refused in words") {
        CHECK(parsed("\u22125 °C", Quantity::temperature) == near(268.15));
        CHECK(parsed("\u22121 1/2 in", Quantity::length) == near(-0.0381));
        CHECK(parsed("7\u00a0mm", Quantity::length) == near(7e-3));
        CHECK(parsed("7\u202fmm", Quantity::length) == near(7e-3));
        CHECK(says(refusal("\u2212-5 °C", Quantity::temperature), "a number is missing"));
        CHECK(says(refusal("\u2212", Quantity::temperature), "a number is missing"));
        CHECK(says(refusal("7,5 mm", Quantity::length), "write a decimal point"));
        CHECK(says(refusal("1,000 mm", Quantity::length), "write a decimal point"));
    }
}

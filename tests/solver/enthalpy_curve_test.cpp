#include "solver/enthalpy_curve.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

/// Specific heat of carbon steel [J/(kg K)] by EN 1993-1-2, 3.4.1.2, against degrees Celsius.
double steel(double t) {
    if (t < 600) return 425 + 0.773 * t - 1.69e-3 * t * t + 2.22e-6 * t * t * t;
    if (t < 735) return 666 + 13002 / (738 - t);
    if (t < 900) return 545 + 17820 / (t - 731);
    return 650;
}

/// The same as a table against kelvin, fine round the peak.
Table steel_table() {
    std::vector<double> x, y;
    for (double t = 20; t <= 1200; t += t >= 700 && t < 770 ? 0.25 : 5) {
        x.push_back(t + constants::ice_point);
        y.push_back(steel(t));
    }
    return {x, y};
}

}  // namespace

TEST_SUITE("solver/enthalpy_curve") {
    TEST_CASE("heating steel from 20 to 800 degC takes 561.6 kJ/kg, its 735 degC peak included") {
        const EnthalpyCurve curve(steel_table());
        // Integral of EN 1993-1-2 by parts: the powers, and logarithms round the peak.
        const auto power = [](double t) {
            return 425 * t + 0.773 / 2 * t * t - 1.69e-3 / 3 * t * t * t +
                   2.22e-6 / 4 * t * t * t * t;
        };
        const double exact = power(600) - power(20) + 666 * 135 + 13002 * std::log(138.0 / 3) +
                             545 * 65 + 17820 * std::log(69.0 / 4);
        CHECK(exact == near(561.6e3, 1e-3));  // the figure that the tables state, rounded
        const double heat =
            curve.enthalpy(800 + constants::ice_point) - curve.enthalpy(20 + constants::ice_point);
        // The jump of c at 735 degC falls between two points of the table, 0.25 K apart.
        CHECK(heat == near(exact, 1e-3));
    }

    TEST_CASE("the peak of steel stands where it is, within its few kelvin") {
        const EnthalpyCurve curve(steel_table());
        const double below = 666 * 5 + 13002 * std::log(8.0 / 3);  // 730 to 735 degC
        const double above = 545 * 5 + 17820 * std::log(9.0 / 4);  // 735 to 740 degC
        const auto at = [&](double t) { return curve.enthalpy(t + constants::ice_point); };
        // A grid of 1 K: its cells at 730.15 and so on cut c by less than 2 % of these parts.
        CHECK(at(735) - at(730) == near(below, 0.02));
        CHECK(at(740) - at(735) == near(above, 0.02));
    }

    TEST_CASE("a guess changes nothing but the time it takes") {
        const EnthalpyCurve curve(steel_table());
        for (double t = 1; t < 2500; t += 37.3)
            for (const double guess : {-5.0, 0.0, t - 1.5, t, t + 0.4, 3000.0})
                CHECK(curve.temperature(curve.enthalpy(t), guess) ==
                      curve.temperature(curve.enthalpy(t)));
    }

    TEST_CASE("temperature undoes enthalpy, through the peak and beyond the table") {
        const EnthalpyCurve curve(steel_table());
        for (double t = 150; t < 2500; t += 7.3)
            CHECK(curve.temperature(curve.enthalpy(t)) == near(t, 1e-12));
    }

    TEST_CASE("heat capacity is the slope of enthalpy") {
        const EnthalpyCurve curve(steel_table());
        for (const double t : {300.4, 700.5, 1007.5, 1008.5, 1300.5})
            CHECK(curve.heat_capacity(t) ==
                  near((curve.enthalpy(t + 0.1) - curve.enthalpy(t - 0.1)) / 0.2, 1e-9));
    }

    TEST_CASE("a constant heat capacity gives a straight line from absolute zero") {
        const EnthalpyCurve curve(Table(500.0));
        CHECK(curve.enthalpy(1234.5) == near(500 * 1234.5, 1e-12));
        CHECK(curve.temperature(500 * 3000.0) == near(3000, 1e-12));
    }

    TEST_CASE("a heat capacity that is not positive is refused") {
        CHECK_THROWS_AS(EnthalpyCurve(Table(0.0)), InputError);
        CHECK_THROWS_AS(EnthalpyCurve(Table({300, 400}, {500, -500})), InputError);
    }
}

#include "cli/report/web/moment.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace drawwell;

TEST_SUITE("cli/report/web/moment") {
    TEST_CASE("a moment lies between the rows round it, and nowhere outside the burn") {
        const std::vector<double> time{0, 30, 90};
        const auto between = moment_at(time, 45);
        REQUIRE(between);
        CHECK(between->row == 1);
        CHECK(between->share == doctest::Approx(0.25));
        CHECK(moment_at(time, 30)->row == 1);
        CHECK(moment_at(time, 90)->row == 2);
        CHECK(moment_at(time, 90)->share == 0);
        CHECK_FALSE(moment_at(time, -1));
        CHECK_FALSE(moment_at(time, 90.5));
        CHECK_FALSE(moment_at({}, 0));
    }

    TEST_CASE("a cell is worth what lies straight between its rows, nothing beside a gap") {
        const double gap = std::numeric_limits<double>::quiet_NaN();
        const Column column{"x", "K", "", "", 2, {300, 1, 400, 2, 500, gap}};
        CHECK(value_at(column, 0, {0, 0.25}) == doctest::Approx(325));
        CHECK(value_at(column, 1, {1, 0}) == 2);
        CHECK(std::isnan(value_at(column, 1, {1, 0.5})));
        CHECK(value_at(column, 0, {2, 0}) == 500);
    }
}

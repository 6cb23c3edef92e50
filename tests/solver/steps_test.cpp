#include "solver/steps.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/errors.h"

using namespace drawwell;

TEST_SUITE("solver/steps") {
    TEST_CASE("each value holds from its time until the next") {
        const Steps steps({10, 20}, {1, 0.5});
        CHECK(steps(10) == 1);
        CHECK(steps(19.9) == 1);
        CHECK(steps(20) == 0.5);
        CHECK(steps(1e9) == 0.5);
    }

    TEST_CASE("just before a step the old value still holds") {
        const Steps steps({0, 20}, {1, 0.5});
        CHECK(steps(std::nextafter(20.0, 0.0)) == 1);
    }

    TEST_CASE("before the first time the first value holds") {
        CHECK(Steps({10, 20}, {1, 0.5})(-3) == 1);
        CHECK(Steps(0.7)(-3) == 0.7);
        CHECK(Steps(0.7)(3) == 0.7);
    }

    TEST_CASE("times that do not increase, or do not match, are refused") {
        CHECK_THROWS_AS(Steps({1, 1}, {2, 3}), InputError);
        CHECK_THROWS_AS(Steps({1, 2}, {2}), InputError);
        CHECK_THROWS_AS(Steps(std::vector<double>{}, std::vector<double>{}), InputError);
    }
}

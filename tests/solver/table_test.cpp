#include "solver/table.h"

#include <doctest/doctest.h>

#include "solver/errors.h"

using namespace drawwell;

TEST_SUITE("solver/table") {
    TEST_CASE("a table is linear between its points and passes through them") {
        const Table table({1, 2, 4}, {10, 20, 0});
        CHECK(table(1) == 10);
        CHECK(table(2) == 20);
        CHECK(table(4) == 0);
        CHECK(table(1.5) == doctest::Approx(15));
        CHECK(table(3) == doctest::Approx(10));
    }

    TEST_CASE("a table is level beyond its ends") {
        const Table table({1, 2}, {10, 20});
        CHECK(table(-5) == 10);
        CHECK(table(99) == 20);
    }

    TEST_CASE("a constant is the same everywhere") {
        const Table table(3.5);
        CHECK(table(-1e6) == 3.5);
        CHECK(table(1e6) == 3.5);
    }

    TEST_CASE("a long table, searched by halves, agrees with a short one") {
        std::vector<double> x, y;
        for (int i = 0; i < 40; ++i) {
            x.push_back(0.1 * i * i);
            y.push_back(1.0 * i);
        }
        const Table table(x, y);
        for (std::size_t i = 1; i < x.size(); ++i) {
            CHECK(table(x[i]) == doctest::Approx(y[i]));
            CHECK(table((x[i - 1] + x[i]) / 2) == doctest::Approx(y[i] - 0.5));
        }
    }

    TEST_CASE("points that do not increase, or do not match, are refused") {
        CHECK_THROWS_AS(Table({1, 1}, {2, 3}), InputError);
        CHECK_THROWS_AS(Table({2, 1}, {2, 3}), InputError);
        CHECK_THROWS_AS(Table({1, 2}, {2}), InputError);
        CHECK_THROWS_AS(Table(std::vector<double>{}, std::vector<double>{}), InputError);
    }
}

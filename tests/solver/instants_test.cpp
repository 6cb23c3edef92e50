#include "solver/instants.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace drawwell;
using Times = std::vector<double>;

TEST_SUITE("solver/instants") {
    TEST_CASE("the same time in hours and in minutes is one instant") {
        REQUIRE(1.1 * 3600 != 66 * 60.0);
        CHECK(distinct_instants({1.1 * 3600, 7200, 66 * 60.0, 0}) == Times{0, 66 * 60.0, 7200});
        CHECK(instant_among({0, 66 * 60.0}, 1.1 * 3600) == 66 * 60.0);
        CHECK(instant_among({0, 1.1 * 3600}, 66 * 60.0) == 1.1 * 3600);
    }

    TEST_CASE("times that a person could tell apart stay apart") {
        const Times apart{0, 1e-5, 600, 600.001};
        CHECK(distinct_instants(apart) == apart);
        CHECK(instant_among(apart, 600.0005) == 600.0005);
        CHECK(instant_among({}, 5) == 5);
    }

    TEST_CASE("a row of instants each close to the next is not drawn into one") {
        Times row;
        for (int i = 0; i <= 1000; ++i) row.push_back(60 + 0.9 * i * same_instant);
        const Times kept = distinct_instants(row);
        CHECK(kept.size() == 501);  // every second one
        for (const double time : row) CHECK(std::abs(instant_among(kept, time) - time) <= 1e-6);
    }

    TEST_CASE("every time is at one of the instants made of it however they lie") {
        std::mt19937 dice(1);
        std::uniform_int_distribution<int> steps(0, 40);
        for (int run = 0; run < 200; ++run) {
            Times all;
            for (int i = 0; i < 30; ++i) all.push_back(3600 + steps(dice) * same_instant / 3);
            const Times kept = distinct_instants(all);
            for (std::size_t i = 1; i < kept.size(); ++i)
                CHECK(kept[i] - kept[i - 1] > same_instant);
            for (const double time : all)
                CHECK(std::binary_search(kept.begin(), kept.end(), instant_among(kept, time)));
        }
    }
}

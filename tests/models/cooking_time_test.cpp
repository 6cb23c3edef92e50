#include "models/cooking_time.h"

#include <doctest/doctest.h>

#include <vector>

#include "solver/constants.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

constexpr double celsius = constants::ice_point;

}  // namespace

TEST_SUITE("models/cooking_time") {
    TEST_CASE("a plate that warms by a degree a second is in each band for the band's width") {
        const std::vector<double> time{0, 300}, plate{celsius, 300 + celsius};
        const CookingTime there = cooking_time(time, plate);
        CHECK(there.warm == near(60, 1e-9));
        CHECK(there.simmer == near(55, 1e-9));
        CHECK(there.fry == near(55, 1e-9));
        CHECK(there.sear == near(70, 1e-9));
        const std::vector<double> cooling{300 + celsius, celsius};
        CHECK(cooking_time(time, cooling).fry == near(55, 1e-9));
    }

    TEST_CASE("a steady plate counts in one band for all the time, a cold one in none") {
        const std::vector<double> time{0, 30, 90};
        const auto at = [&](double c) {
            return cooking_time(time, std::vector<double>(3, c + celsius));
        };
        CHECK(at(100).warm == 90);
        CHECK(at(120).simmer == 90);
        CHECK(at(200).fry == 90);
        CHECK(at(400).sear == 90);
        CHECK(at(100).sear + at(100).fry + at(100).simmer == 0);
        CHECK(at(59).warm == 0);
    }

    TEST_CASE("samples need not be evenly spaced, and one sample is no time") {
        const std::vector<double> time{0, 10, 100},
            plate{200 + celsius, 200 + celsius, 260 + celsius};
        const CookingTime there = cooking_time(time, plate);
        CHECK(there.fry == near(10 + 45, 1e-9));
        CHECK(there.sear == near(45, 1e-9));
        CHECK(cooking_time(std::vector<double>{5}, std::vector<double>{500}).sear == 0);
    }

    TEST_CASE("under a pot of 200 mm, rings count by the area it covers") {
        const std::vector<double> edge{0, 0.05, 0.08, 0.2}, ring{500, 400, 300};
        // Areas up to 100 mm: 25, 39 and 36 of 100.
        CHECK(mean_under_pot(edge, ring) == near(0.25 * 500 + 0.39 * 400 + 0.36 * 300, 1e-12));
        const std::vector<double> small{0, 0.06}, alone{450};
        CHECK(mean_under_pot(small, alone) == 450);
    }
}

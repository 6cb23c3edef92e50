#include "models/fire/burnout.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

double time_at(double celsius, double oxygen = 0.09, double water = 0.11) {
    return carbon_monoxide_time({.temperature = celsius + constants::ice_point,
                                 .pressure = 101325,
                                 .oxygen = oxygen,
                                 .water = water});
}

}  // namespace

TEST_SUITE("models/fire/burnout") {
    TEST_CASE("carbon monoxide burns out as the rate of Howard and others says") {
        // Computed from the formula (Howard, Williams and Fine 1973, from memory), with 9 % oxygen
        // and 11 % water. Figures of two digits: 5 %.
        CHECK(time_at(500) == near(1.5, 0.05));
        CHECK(time_at(600) == near(0.18, 0.05));
        CHECK(time_at(700) == near(0.034, 0.05));
        CHECK(time_at(800) == near(0.009, 0.06));
    }

    TEST_CASE("it burns faster the hotter, and with more oxygen and water") {
        double last = time_at(450);
        for (double t = 475; t < 1300; t += 25) {
            CHECK(time_at(t) < last);
            last = time_at(t);
        }
        CHECK(time_at(700, 0.0225) == near(2 * time_at(700), 1e-9));
        CHECK(time_at(700, 0.09, 0.0275) == near(2 * time_at(700), 1e-9));
    }

    TEST_CASE("without oxygen or water it never burns") {
        CHECK(std::isinf(time_at(700, 0)));
        CHECK(std::isinf(time_at(700, 0.09, 0)));
    }

    TEST_CASE("in traces of oxygen, or in the cold, its time is endless and no overflow") {
        CHECK(std::isinf(time_at(-253, 1e-300, 1e-300)));
        CHECK(std::isinf(time_at(-253)));
        CHECK(std::isinf(time_at(700, 1e-320, 1e-320)));
    }
}

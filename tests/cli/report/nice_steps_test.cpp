#include "cli/report/nice_steps.h"

#include <doctest/doctest.h>

#include <initializer_list>
#include <limits>

using namespace drawwell;

TEST_SUITE("cli/report/nice_steps") {
    TEST_CASE("steps are 1, 2 or 5 times a power of ten and stay within the range") {
        const NiceSteps steps = nice_steps(-1.3, 7.9, 8);
        CHECK(steps.step == 2);
        CHECK(steps.first == 0);
        CHECK(steps.count == 4);
        CHECK(steps.decimals == 0);
        CHECK(nice_steps(0, 0.0042, 8).step == doctest::Approx(0.001));
        CHECK(nice_steps(0, 0.0042, 8).decimals == 3);
        CHECK(nice_steps(-12e9, 3e9, 7).step == doctest::Approx(5e9));
    }

    TEST_CASE("however large or narrow a range is, there are few steps") {
        for (const double scale : {1e-300, 1e-9, 1.0, 1e9, 1e300})
            for (const double from : {-1.0, 0.0, 0.5, 1 - 1e-13}) {
                const NiceSteps steps = nice_steps(from * scale, scale, 8);
                CHECK(steps.count <= 17);
                if (steps.count > 0) CHECK(steps.at(steps.count - 1) <= scale * (1 + 1e-9));
            }
    }

    TEST_CASE("a range that is empty or not finite has none") {
        const double nan = std::numeric_limits<double>::quiet_NaN();
        CHECK(nice_steps(1, 1, 8).count == 0);
        CHECK(nice_steps(2, 1, 8).count == 0);
        CHECK(nice_steps(nan, 1, 8).count == 0);
        CHECK(nice_steps(-1e308, 1.5e308, 8).count == 0);
    }
}

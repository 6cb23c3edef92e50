#include "solver/curve_top.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/near.h"

using namespace drawwell;

namespace {

struct Asked {
    CurvePoint top;
    int times = 0;
};

/// The top from x = 1, where the curve is zero, and what it took.
Asked top_of(const std::function<double(double)>& curve, double expected = 0) {
    Asked asked;
    asked.top = curve_top(
        [&](double x) {
            ++asked.times;
            return curve(x);
        },
        {1, 0}, expected);
    return asked;
}

}  // namespace

TEST_SUITE("solver/curve_top") {
    constexpr double to_a_thousandth = 1e-3;

    TEST_CASE("a round top is found to a thousandth of its height, wherever it stands") {
        for (const double at : {0.05, 0.21, 0.5, 0.77, 0.93}) {
            const auto curve = [at](double x) {
                return 1 - (x - at) * (x - at) / (1 - at) / (1 - at);
            };
            const Asked asked = top_of(curve);
            CHECK(asked.top.y == near(1, to_a_thousandth));
            CHECK(asked.times <= 15);
        }
    }

    TEST_CASE("a kink is found where its two slopes meet") {
        for (const double at : {0.07, 0.2, 0.43, 0.9}) {
            const auto curve = [at](double x) {
                return x > at ? 5 * (1 - x) / (1 - at) : 5 - 3 * (at - x);
            };
            const Asked asked = top_of(curve);
            CHECK(asked.top.y == near(5, to_a_thousandth));
            CHECK(std::abs(asked.top.x - at) < 0.01);
            CHECK(asked.times <= 12);
        }
    }

    TEST_CASE("a curve that only rises on the way down is highest at its end") {
        const Asked asked = top_of([](double x) { return 6 - 6 * x * x; });
        CHECK(asked.top.x == 0);
        CHECK(asked.top.y == 6);
    }

    TEST_CASE("a hump close before the end is found") {
        // As losses of a trickle have it: higher at 0.03 of the way than at rest, lower between.
        const auto curve = [](double x) {
            if (x < 0.03) return 10.5 + 20 * x;
            if (x < 0.1) return 11.1 - 13 * (x - 0.03);
            return x < 0.3 ? 10.19 - 3 * (x - 0.1) : 9.59 * (1 - x) / 0.7;
        };
        const Asked asked = top_of(curve);
        CHECK(asked.top.y == near(11.1, to_a_thousandth));
        CHECK(asked.times <= 17);
    }

    TEST_CASE("a curve that only falls is highest where it starts") {
        const Asked asked = top_of([](double x) { return x - 1; });
        CHECK(asked.top.x == 1);
        CHECK(asked.top.y == 0);
    }

    TEST_CASE("a top near where it is expected takes a few points only") {
        const auto curve = [](double x) { return 4 + 6 * x - 10 * x * x; };
        const Asked asked = top_of(curve, 0.33);
        CHECK(asked.top.y == near(4.9, to_a_thousandth));
        CHECK(asked.times <= 5);
    }

    TEST_CASE("an expectation that fails is forgotten") {
        const auto curve = [](double x) { return 4 + 6 * x - 10 * x * x; };
        for (const double expected : {0.02, 0.1, 0.6, 0.97, 3.0}) {
            const Asked asked = top_of(curve, expected);
            CHECK(asked.top.y == near(4.9, to_a_thousandth));
            CHECK(asked.times <= 15);
        }
    }
}

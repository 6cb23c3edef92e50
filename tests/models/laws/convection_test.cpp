#include "models/laws/convection.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "tests/near.h"

using namespace drawwell;

TEST_CASE("laminar ducts follow the combined entry of Baehr and Stephan") {
    // C5: worked example of the open library `ht`, Gz 11000 at Pr 1.1 (Re 2000, L/D 0.2).
    CHECK(duct_nusselt_mean(2000, 1.1, 0.2) == near(72.65, 1e-4));
    // C7: Gz 10, 100, 250 at Pr 0.7, computed from the formula.
    CHECK(duct_nusselt_mean(1000, 0.7, 70) == near(4.547, 3e-4));
    CHECK(duct_nusselt_mean(1000, 0.7, 7) == near(9.122, 3e-4));
    CHECK(duct_nusselt_mean(1000, 0.7, 2.8) == near(13.323, 3e-4));
    // C8: long ducts.
    CHECK(duct_nusselt_mean(100, 0.7, 1e6) == near(3.66, 1e-3));
    CHECK(duct_nusselt_mean(0, 0.7, 5) == near(3.66, 1e-3));
}

TEST_CASE("turbulent ducts follow Gnielinski with the entry's multiplier") {
    // C3, C4: Re 1e4 and 5000 at Pr 0.7, smooth, computed for a long duct.
    CHECK(duct_nusselt_mean(1e4, 0.7, 1e9) == near(29.82, 1e-3));
    CHECK(duct_nusselt_mean(5000, 0.7, 1e9) == near(16.62, 1e-3));
    // One plus (1/8)^(2/3) is 1.25.
    CHECK(duct_nusselt_mean(1e4, 0.7, 8) == near(1.25 * 29.82, 1e-3));
    // Dittus and Boelter, 0.023 Re^0.8 Pr^0.4, lies 6 to 10 % above at Re 1e4.
    const double dittus = 0.023 * std::pow(1e4, 0.8) * std::pow(0.7, 0.4);
    CHECK(dittus / duct_nusselt_mean(1e4, 0.7, 1e9) == near(1.06, 0.01));
}

TEST_CASE("the Nusselt number is continuous through the transition and for either direction") {
    for (double length : {2.0, 8.0, 50.0})
        for (double re : {2300.0, 4000.0})
            CHECK(duct_nusselt_mean(re - 1e-6, 0.7, length) ==
                  near(duct_nusselt_mean(re + 1e-6, 0.7, length), 1e-8));
    CHECK(duct_nusselt_mean(-3000, 0.7, 8) == duct_nusselt_mean(3000, 0.7, 8));
    // Halfway, half of each.
    CHECK(duct_nusselt_mean(3150, 0.7, 8) ==
          near(0.5 * (duct_nusselt_mean(2300, 0.7, 8) + duct_nusselt_mean(4000, 0.7, 8)), 1e-9));
}

TEST_CASE("a longer duct has the smaller mean, a faster flow the larger") {
    for (double re : {50.0, 1000.0, 2000.0, 3000.0, 8000.0}) {
        double last = 1e9;
        for (double length = 0.2; length < 300; length *= 1.5) {
            const double now = duct_nusselt_mean(re, 0.7, length);
            CHECK(now < last);
            CHECK(now >= 3.65);
            last = now;
        }
        CHECK(duct_nusselt_mean(1.1 * re, 0.7, 10) > duct_nusselt_mean(re, 0.7, 10));
    }
}

TEST_CASE("the jet under the plate stays between its two bounds") {
    for (double re : {1000.0, 2000.0, 4000.0, 1e4})
        for (double gap : {0.2, 0.35, 0.6}) {
            const double free = 0.76 * std::sqrt(re) * std::pow(0.7, 0.4);
            const double confined = 0.726 * std::pow(re, 0.53) * std::pow(gap, -0.19);
            const double nusselt = stagnation_nusselt(re, 0.7, gap);
            CHECK(nusselt > std::min(free, confined));
            CHECK(nusselt < std::max(free, confined));
            CHECK(nusselt * nusselt == near(free * confined, 1e-12));
        }
    CHECK(stagnation_nusselt(0, 0.7, 0.3) >= 0);
}

TEST_CASE("at stove flows the jet gives 15 to 32 W/(m2 K), as trial calculations did") {
    // Bore 150 mm, gas at 1000 K with 0.073 W/(m K) (flue gas table, computed).
    for (double re : {2000.0, 4000.0}) {
        const double h = stagnation_nusselt(re, 0.7, 0.35) * 0.073 / 0.15;
        CHECK(h > 15);
        CHECK(h < 32);
    }
}

TEST_CASE("away from the jet its heat falls with the radius") {
    CHECK(stagnation_profile(0) == 1);
    CHECK(stagnation_profile(1) == 1);
    CHECK(stagnation_profile(1 + 1e-9) == near(1, 1e-8));
    CHECK(stagnation_profile(2) == near(0.5, 1e-12));
}

TEST_CASE("natural and forced convection add or oppose by their cubes") {
    CHECK(mixed_nusselt(3, 4, true) == near(std::cbrt(91), 1e-12));
    CHECK(mixed_nusselt(4, 0, false) == near(4, 1e-6));
    CHECK(mixed_nusselt(0, 4, false) == near(4, 1e-6));
    CHECK(mixed_nusselt(4, 3, false) == mixed_nusselt(3, 4, false));
    // Far from cancelling, the rounding is below 1 %: cube root of 208 for 6 and 2.
    CHECK(mixed_nusselt(6, 2, false) == near(std::cbrt(208), 0.01));
    for (double natural = 0.5; natural < 20; natural += 0.25) {
        CHECK(mixed_nusselt(natural, 5, false) < mixed_nusselt(natural, 5, true));
        CHECK(mixed_nusselt(natural, 5, false) > 0.5 * std::max(std::abs(natural - 5), 1.0));
        // No cliff: a hundredth of change in one moves the result by no more than a tenth.
        CHECK(std::abs(mixed_nusselt(natural + 0.01, 5, false) - mixed_nusselt(natural, 5, false)) <
              0.1);
    }
    CHECK(mixed_nusselt(5, 5, false) == near(0.585 * 5, 1e-2));
    CHECK(mixed_nusselt(0, 0, false) > 0);
}

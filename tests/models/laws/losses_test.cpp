#include "models/laws/losses.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

TEST_CASE("mitre bends lose what Rennels gives") {
    // Read in the open library `fluids`: 30/45/60/90/120/150 degrees.
    const double degree = constants::pi / 180;
    const double expected[][2] = {{30, 0.153}, {45, 0.304},  {60, 0.530},
                                  {90, 1.202}, {120, 2.026}, {150, 2.713}};
    for (const auto& [angle, loss] : expected)
        CHECK(mitre_bend_loss(angle * degree) == near(loss, 2e-3));  // three digits printed
    CHECK(mitre_bend_loss(0) == 0);
    CHECK_THROWS_AS(mitre_bend_loss(4), InputError);
    CHECK_THROWS_AS(mitre_bend_loss(-0.1), InputError);
}

TEST_CASE("a tee's side costs as much as either source within its width") {
    // ASHRAE's chimney tee 1.25, Crane's 60 f_T at 100 mm 1.08: both from memory, +-0.2 in the law.
    for (const double source : {1.25, 1.08}) CHECK(std::abs(tee_side_loss() - source) <= 0.2);
    CHECK(tee_side_loss() > mitre_bend_loss(constants::pi / 4));
}

TEST_CASE("a port in one duct loses what Idelchik's orifice does") {
    // Diameter ratios 0.5, 0.707, 0.75: computed from (1 - f + 0.707 sqrt(1 - f))^2.
    CHECK(port_loss(0.25, 0.25) == near(1.856, 1e-3));
    CHECK(port_loss(0.5, 0.5) == near(1.000, 1e-3));
    CHECK(port_loss(0.5625, 0.5625) == near(0.819, 1e-3));
    // On the duct's velocity: over f^2.
    CHECK(port_loss(0.25, 0.25) / (0.25 * 0.25) == near(29.7, 1e-3));
}

TEST_CASE("a port between unequal ducts has the right limits") {
    CHECK(port_loss(1, 1) == 0);
    // Between large spaces it is a hole; Rennels' 2.814 is 3.6 % less.
    CHECK(port_loss(0, 0) == near(hole_loss(), 1e-12));
    CHECK(hole_loss() == near(2.914, 1e-3));
    // No narrowing before it: only the dumping behind is left.
    CHECK(port_loss(1, 0.3) == near(sudden_expansion_loss(0.3), 1e-12));
    // No widening behind it: the contraction, by Idelchik's own 0.5 (1 - a).
    CHECK(port_loss(0.3, 1) == near(sudden_contraction_loss(0.3), 1e-3));
    for (double a = 0; a < 0.95; a += 0.1) {
        CHECK(port_loss(a + 0.05, 0.4) < port_loss(a, 0.4));
        CHECK(port_loss(0.4, a + 0.05) < port_loss(0.4, a));
    }
    CHECK_THROWS_AS(port_loss(1.1, 0.5), InputError);
    CHECK_THROWS_AS(port_loss(0.5, -0.1), InputError);
}

TEST_CASE("abrupt changes of section lose by Borda and Carnot and by Idelchik") {
    // Diameter ratio 0.5: 0.5625, exact. Diameter ratio 0.4: 0.42, computed.
    CHECK(sudden_expansion_loss(0.25) == near(0.5625, 1e-12));
    CHECK(sudden_contraction_loss(0.16) == near(0.42, 1e-12));
    CHECK(sudden_expansion_loss(0) == exit_loss());
    CHECK(sudden_contraction_loss(0) == entrance_loss());
    CHECK(sudden_expansion_loss(1) == 0);
    CHECK_THROWS_AS(sudden_expansion_loss(2), InputError);
    CHECK_THROWS_AS(sudden_contraction_loss(-1), InputError);
}

TEST_CASE("the turn under the plate throttles when the gap is narrow and only dumps when wide") {
    // 3.5, 2.0, 1.4 at 0.25, 0.4, 0.6: from memory of Idelchik's plate valve, rounded to 0.1.
    CHECK(turn_under_plate_loss(0.25) == near(3.5, 0.03));
    CHECK(turn_under_plate_loss(0.4) == near(2.0, 0.03));
    CHECK(turn_under_plate_loss(0.6) == near(1.4, 0.03));
    CHECK(turn_under_plate_loss(100) == near(1.0, 1e-4));
    CHECK_THROWS_AS(turn_under_plate_loss(0), InputError);
}

#include "models/laws/friction.h"

#include <doctest/doctest.h>

#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

double smooth(double re) {
    return friction_times_reynolds({.reynolds = re});
}
double rough(double re, double roughness) {
    return friction_times_reynolds({.reynolds = re, .rough = haaland_roughness(roughness)});
}

}  // namespace

TEST_CASE("laminar flow in a round duct has a friction factor of 64 over the Reynolds number") {
    // F1: 0.5 at Re 128, worked example of the open library `fluids`.
    CHECK(smooth(128) / 128 == near(0.5, 1e-12));
    CHECK(smooth(0) == 64);
    CHECK(friction_times_reynolds({.reynolds = 500, .laminar_constant = 96}) == 96);
}

TEST_CASE("turbulent friction is Haaland's") {
    // F2: worked example of `fluids`, 0.1 %. F4: computed from the formula, 0.2 %. F5: 0.3 %.
    CHECK(rough(1e5, 1e-4) / 1e5 == near(0.018265, 1e-3));
    CHECK(rough(1e4, 0.006667) / 1e4 == near(0.03940, 2e-3));
    CHECK(rough(4000, 0.006667) / 4000 == near(0.0463, 3e-3));
    // F3: Blasius 0.03164 at Re 1e4, smooth; the two laws agree to 3 % there.
    CHECK(smooth(1e4) / 1e4 == near(0.03164, 0.03));
}

TEST_CASE("friction is continuous with a continuous slope through the transition") {
    const double step = 1e-3;
    for (double roughness : {0.0, 1e-3, 0.03})
        for (double re : {2300.0, 4000.0}) {
            const double before = rough(re - step, roughness), at = rough(re, roughness),
                         after = rough(re + step, roughness);
            // A kink would show as a jump of slope; slopes here are about 0.03.
            CHECK(after - at == doctest::Approx(at - before).epsilon(1e-6));
            CHECK(at == near(before, 1e-5));
        }
}

TEST_CASE("friction times Reynolds number never falls as the flow quickens, nor as walls roughen") {
    for (double constant : {56.9, 64.0, 96.0})
        for (double roughness : {0.0, 0.002, 0.05}) {
            double last = 0;
            for (double re = 0; re < 3e4; re += 50) {
                const DuctFriction duct{re, roughness, constant};
                const double now = friction_times_reynolds(duct);
                CHECK(now >= last);
                CHECK(now >= friction_times_reynolds({re, 0.5 * roughness, constant}));
                last = now;
            }
        }
}

TEST_CASE("friction does not care which way the gas goes") {
    CHECK(rough(-3000, 0.01) == rough(3000, 0.01));
}

TEST_CASE("an annulus rubs as the exact laminar solution says") {
    // F6: computed from the exact solution; 95.25 at 0.5 also from memory of Shah and London.
    CHECK(annulus_laminar_constant(0.1) == near(89.37, 1e-4));
    CHECK(annulus_laminar_constant(0.25) == near(93.21, 1e-4));
    CHECK(annulus_laminar_constant(0.5) == near(95.25, 1e-4));
    CHECK(annulus_laminar_constant(0.8) == near(95.92, 1e-4));
    CHECK(annulus_laminar_constant(0) == 64);
    CHECK(annulus_laminar_constant(1) == 96);
    // The two forms meet: the formula is 2e-8 below plates there.
    CHECK(annulus_laminar_constant(1 - 1.001e-3) == near(96, 1e-6));
    CHECK_THROWS_AS(annulus_laminar_constant(1.1), InputError);
    CHECK_THROWS_AS(annulus_laminar_constant(-0.1), InputError);
}

TEST_CASE("a rectangle lies between a square and plates, either way round") {
    // 56.9 and 96 from memory of Shah and London; 62.2 at 1:2 too.
    CHECK(rectangle_laminar_constant(1) == near(56.9, 1e-3));
    CHECK(rectangle_laminar_constant(0.5) == near(62.2, 1e-3));
    CHECK(rectangle_laminar_constant(1e-9) == near(96, 1e-6));
    CHECK(rectangle_laminar_constant(3) == near(rectangle_laminar_constant(1.0 / 3), 1e-12));
    CHECK_THROWS_AS(rectangle_laminar_constant(0), InputError);
}

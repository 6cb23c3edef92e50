#include "models/fire/fuel_lot.h"

#include <doctest/doctest.h>

#include "tests/models/fire/bed_bench.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

TEST_SUITE("models/fire/fuel_lot") {
    TEST_CASE(
        "pieces sink as they burn: the fire has as much of them until the last has come "
        "down") {
        const FuelLot lot = sticks();  // a quarter of each stands in the fire
        CHECK(lot.lit_area_left(0.6) == near(0.05, 1e-12));
        CHECK(lot.lit_area_left(0.3 * 0.6) == near(0.05, 1e-12));
        CHECK(lot.section_left(0.3 * 0.6) == near(0.004, 1e-12));
        // A quarter of the foot left: half its sides, a quarter of its section.
        CHECK(lot.lit_area_left(0.25 * 0.25 * 0.6) == near(0.025, 1e-12));
        CHECK(lot.section_left(0.25 * 0.25 * 0.6) == near(0.001, 1e-12));
        CHECK(lot.lit_area_left(-1e-9) == 0);
    }

    TEST_CASE("a lot loses wood at its rate, and the last splinters ever less") {
        const FuelLot lot = sticks();
        CHECK(lot.losing(0.0003, 0.6) == near(0.0003, 1e-12));
        CHECK(lot.losing(0.0003, 0.06) == near(0.0003, 0.1));
        CHECK(lot.losing(0.0003, 0.006) == near(0.0003 / 2, 0.02));
        CHECK(lot.losing(0.0003, 0) == 0);
        CHECK(lot.losing(-0.0003, 0.6) == 0);
        for (const double wood : {0.6, 0.06, 0.006})
            CHECK(lot.losing_share(0.0003, wood) * wood == near(lot.losing(0.0003, wood), 1e-12));
        const double step = 1e-7;
        CHECK(lot.losing_slope(0.0003, 0.006) ==
              near((lot.losing(0.0003, 0.006 + step) - lot.losing(0.0003, 0.006)) / step, 1e-3));
    }

    TEST_CASE("pieces that stand apart are lit on every side, a bundle on its outside") {
        CHECK(perimeter_apart(3, 0.035) == near(3 * 4 * 0.035, 1e-12));
        // By hand, in sides of a piece: one 4, two abreast 6, three or four in a square of two 8,
        // five or six in two rows of three 10, seven to nine in a square of three 12.
        const int sides[] = {4, 6, 8, 8, 10, 10, 12, 12, 12};
        for (int pieces = 1; pieces <= 9; ++pieces)
            CHECK(perimeter_bundled(pieces, 0.035) == near(0.035 * sides[pieces - 1], 1e-12));
        CHECK(perimeter_bundled(100, 0.01) == near(0.4, 1e-12));
    }
}

#include "models/laws/natural_convection.h"

#include <doctest/doctest.h>

#include "tests/near.h"

using namespace drawwell;

TEST_CASE("an upright plate follows Churchill and Chu") {
    // N1: worked example of the open library `ht`, said there to match Incropera example 9.2.
    CHECK(natural_vertical_nusselt(0.69 * 2.63e9, 0.69) == near(147.16, 1e-4));
    // N2: the panel of that example in full: Ra 1.813e9, h 7.00 W/(m2 K) with k 33.8e-3 on 0.71 m.
    CHECK(natural_vertical_nusselt(1.813e9, 0.69) * 33.8e-3 / 0.71 == near(7.00, 2e-3));
    CHECK(natural_vertical_nusselt(0, 0.7) == near(0.825 * 0.825, 1e-12));
}

TEST_CASE("a level cylinder follows Churchill and Chu") {
    // N4: worked example of `ht`.
    CHECK(natural_cylinder_nusselt(0.69 * 2.63e9, 0.69) == near(139.13, 1e-4));
    CHECK(natural_cylinder_nusselt(-5, 0.7) == near(0.36, 1e-12));
}

TEST_CASE("level plates follow McAdams") {
    // N5: worked example of `ht`, Pr 5.54 and Gr 3.21e8.
    CHECK(natural_up_nusselt(5.54 * 3.21e8) == near(181.73, 1e-4));
    CHECK(natural_down_nusselt(5.54 * 3.21e8) == near(55.45, 1e-4));
    // N7: computed from 0.54 Ra^(1/4) and 0.15 Ra^(1/3).
    CHECK(natural_up_nusselt(1e6) == near(17.08, 1e-3));
    CHECK(natural_up_nusselt(1e8) == near(69.62, 1e-3));
}

TEST_CASE("level plates keep conducting as the difference vanishes, without a jump on the way") {
    CHECK(natural_up_nusselt(0) == 1);
    CHECK(natural_down_nusselt(0) == 1);
    CHECK(natural_up_nusselt(-10) == 1);
    double last_up = natural_up_nusselt(1), last_down = 1;
    for (double ra = 1; ra < 1e10; ra *= 1.05) {
        const double up = natural_up_nusselt(ra), down = natural_down_nusselt(ra);
        CHECK(up >= last_up);
        CHECK(down >= last_down);
        CHECK(up > down);
        // 5 % in Ra moves a third-power law by 1.7 %.
        CHECK(up < 1.018 * last_up);
        last_up = up;
        last_down = down;
    }
}

TEST_CASE("wind along a plate is laminar at first and turbulent later") {
    // 0.664 Re^0.5 Pr^(1/3) is 37.3 at Re 4000; the turbulent part, computed 25.5, adds a fifth.
    const double laminar = 0.664 * 63.2456 * 0.8879;
    CHECK(wind_plate_nusselt(4000, 0.7) == near(1.21 * laminar, 0.01));
    // 0.037 Re^0.8 Pr^(1/3) at 1e6: 2073; the two forms of the turbulent law agree to a tenth.
    CHECK(wind_plate_nusselt(1e6, 0.7) == near(2073, 0.1));
    CHECK(wind_plate_nusselt(0, 0.7) == 0);
    CHECK(wind_plate_nusselt(10 - 1e-9, 0.7) == near(wind_plate_nusselt(10 + 1e-9, 0.7), 1e-6));
}

TEST_CASE("wind across a cylinder follows Churchill and Bernstein") {
    // Worked example of `ht`, said there to match Incropera example 7.3.
    CHECK(wind_cylinder_nusselt(6071, 0.7) == near(40.63708594, 1e-9));
    CHECK(wind_cylinder_nusselt(0, 0.7) == 0.3);
    CHECK(wind_cylinder_nusselt(1e-12, 0.7) == near(0.3, 1e-4));
}

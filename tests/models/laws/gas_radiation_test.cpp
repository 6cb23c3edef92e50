#include "models/laws/gas_radiation.h"

#include <doctest/doctest.h>

#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

TEST_CASE("gas emissivity is Smith's for equal parts of vapour and carbon dioxide") {
    // G1 to G5: computed from the coefficients of Smith, Shen and Friedman; printed to four places.
    CHECK(gas_emissivity(1200, 0.2 * 0.135) == near(0.0856, 1e-3));
    CHECK(gas_emissivity(1200, 0.2 * 0.2) == near(0.1038, 1e-3));
    CHECK(gas_emissivity(1200, 0.2 * 1.0) == near(0.2390, 1e-3));
    CHECK(gas_emissivity(1500, 0.2 * 1.0) == near(0.2035, 1e-3));
    CHECK(gas_emissivity(1000, 0.2 * 1.0) == near(0.2600, 1e-3));
}

TEST_CASE("gas emissivity agrees with Leckner's within what gas models agree") {
    // G1 to G5, Leckner's totals computed from coefficients from memory; 15 %.
    CHECK(gas_emissivity(1200, 0.027) == near(0.0905, 0.15));
    CHECK(gas_emissivity(1200, 0.04) == near(0.1109, 0.15));
    CHECK(gas_emissivity(1200, 0.2) == near(0.2273, 0.15));
    CHECK(gas_emissivity(1500, 0.2) == near(0.1903, 0.15));
    CHECK(gas_emissivity(1000, 0.2) == near(0.2493, 0.15));
    // G10, read in test notes of a radiation code: near 0.3 (0.25 to 0.38) at 0.43 atm m and 1200
    // K.
    CHECK(gas_emissivity(1200, 0.43) > 0.25);
    CHECK(gas_emissivity(1200, 0.43) < 0.38);
}

TEST_CASE("gas emissivity rises with the path, stays within bounds and holds its ends") {
    for (double t = 250; t < 3200; t += 50) {
        double last = 0;
        for (double path = 1e-4; path < 100; path *= 1.3) {
            const double now = gas_emissivity(t, path);
            CHECK(now > last);
            CHECK(now < 1);
            last = now;
        }
    }
    CHECK(gas_emissivity(1200, 0) == 0);
    CHECK(gas_emissivity(1200, -1) == 0);
    CHECK(gas_emissivity(300, 0.05) == gas_emissivity(600, 0.05));
    CHECK(gas_emissivity(3000, 0.05) == gas_emissivity(2400, 0.05));
}

TEST_CASE("soot emits what Felske and Tien's form gives") {
    // Computed from the form with C0 = 5 at 1200 K over 0.15 m: 0.0236 and 0.207.
    CHECK(soot_emissivity(1e-7, 1200, 0.15) == near(0.0236, 3e-3));
    CHECK(soot_emissivity(1e-6, 1200, 0.15) == near(0.207, 3e-3));
    // Where the function's argument is 2, its value is pi^4/15 - 6: emissivity 90/pi^4, exact.
    CHECK(soot_emissivity(1e-6, 1000, 0.014388 / 5e-3) == near(0.9239384029, 1e-8));
    CHECK(soot_emissivity(0, 1200, 0.15) == 0);
    CHECK(soot_emissivity(1e-3, 1200, 1) == near(1, 1e-3));
    // No step at the thin end.
    CHECK(soot_emissivity(1e-12, 1200, 0.15) ==
          near(1e-3 * soot_emissivity(1e-9, 1200, 0.15), 1e-3));
}

TEST_CASE("gas and soot together emit less than their sum and more than either") {
    CHECK(combined_emissivity(0.1, 0.2) == near(0.28, 1e-12));
    CHECK(combined_emissivity(0, 0.2) == 0.2);
    CHECK(combined_emissivity(1, 0.2) == near(1, 1e-12));
}

TEST_CASE("the mean beam length of a long cylinder is nine tenths of its bore") {
    // 3.6 V/A with V/A = D/4; Hottel's own 0.95 D for the wall is 5 % more.
    CHECK(mean_beam_length(0.25 * 0.15 * 0.15, 0.15) == near(0.135, 1e-12));
    CHECK_THROWS_AS(mean_beam_length(1, 0), InputError);
}

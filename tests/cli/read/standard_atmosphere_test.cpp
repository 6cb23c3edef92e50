#include "cli/read/standard_atmosphere.h"

#include <doctest/doctest.h>

#include <initializer_list>

using namespace drawwell;

TEST_SUITE("cli/read/standard_atmosphere") {
    TEST_CASE("pressure follows the standard atmosphere's table") {
        CHECK(standard_pressure_at(0) == doctest::Approx(101325));
        // 898.75 hPa at 1000 m, 701.1 hPa at 3000 m: from memory of ISO 2533's table, to its last
        // digit.
        CHECK(standard_pressure_at(1000) == doctest::Approx(89875).epsilon(1e-4));
        CHECK(standard_pressure_at(3000) == doctest::Approx(70110).epsilon(2e-4));
    }

    TEST_CASE("altitude is the inverse of pressure") {
        for (const double altitude : {-400.0, 120.0, 5500.0})
            // Rounding of two powers.
            CHECK(standard_altitude(standard_pressure_at(altitude)) ==
                  doctest::Approx(altitude).epsilon(1e-9));
    }
}

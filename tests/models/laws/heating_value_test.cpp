#include "models/laws/heating_value.h"

#include <doctest/doctest.h>

#include "tests/near.h"

using namespace drawwell;

TEST_CASE("heating values follow Channiwala and Parikh") {
    // Check 7: reference hardwood and softwood, dry with 0.5 % ash: 19.69 and 20.67 MJ/kg,
    // computed.
    const double dry = 0.995;
    CHECK(wood_heating_value({0.493 * dry, 0.061 * dry, 0.444 * dry, 0.002 * dry, 0.005}) ==
          near(19.69e6, 1e-3));
    CHECK(wood_heating_value({0.509 * dry, 0.063 * dry, 0.426 * dry, 0.002 * dry, 0.005}) ==
          near(20.67e6, 1e-3));
    // Check 10: cellulose C6H10O5, 17.74 MJ/kg, computed.
    CHECK(wood_heating_value({72.066 / 162.141, 10.08 / 162.141, 79.995 / 162.141, 0, 0}) ==
          near(17.74e6, 1e-3));
}

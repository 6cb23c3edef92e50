#include "models/laws/cube_root.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/near.h"

using namespace drawwell;

TEST_SUITE("models/laws/cube_root") {
    TEST_CASE("the cube root agrees with the library's over all that laws ask for") {
        for (double x = 1e-12; x < 1e14; x *= 1.37)
            CHECK(cube_root(x) == near(std::cbrt(x), 1e-14));  // a few last digits
    }

    TEST_CASE("nothing has no root but nothing") {
        CHECK(cube_root(0) == 0);
        CHECK(cube_root(-1) == 0);
    }
}

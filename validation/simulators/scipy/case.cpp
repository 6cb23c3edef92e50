#include <doctest/doctest.h>

#include "validation/simulators/right_hand_side/same_equations.h"

TEST_SUITE("quick") {
    TEST_CASE("drawwell's stepper gets where SciPy's Radau gets on the same right-hand side") {
        drawwell::check_same_equations("simulators/scipy", "workshop", 1e-6);
    }
}

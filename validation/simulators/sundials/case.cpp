#include <doctest/doctest.h>

#include "validation/simulators/right_hand_side/same_equations.h"

TEST_SUITE("heavy") {
    TEST_CASE("drawwell's stepper gets where SUNDIALS CVODE gets on the same right-hand side") {
        drawwell::check_same_equations("simulators/sundials", "workshop", 1e-6);
    }
}

#include <doctest/doctest.h>

#include "validation/simulators/right_hand_side/same_equations.h"

TEST_SUITE("heavy") {
    TEST_CASE("from gas that stands drawwell's stepper takes the branch that SciPy's Radau takes") {
        drawwell::check_same_equations("simulators/standing_start", "allotment-kitchen", 1e-5);
    }
}

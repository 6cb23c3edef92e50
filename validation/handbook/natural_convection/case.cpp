#include <doctest/doctest.h>

#include "models/laws/natural_convection.h"
#include "models/laws/outside.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/natural_convection";

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("natural convection is that of the handbooks, as far as these agree") {
        constexpr double ra = 2.63e9 * 0.69;
        compare_beside({name, "Churchill and Chu, upright plate", 147.16,
                        natural_vertical_nusselt(ra, 0.69), 1e-3});
        compare_beside({name, "Churchill and Chu, level cylinder", 139.13,
                        natural_cylinder_nusselt(ra, 0.69), 1e-3});
        constexpr double level = 3.21e8 * 5.54;
        compare_beside({name, "McAdams, facing up", 181.73, natural_up_nusselt(level), 5e-3});
        compare_beside({name, "McAdams, facing down", 55.45, natural_down_nusselt(level), 5e-3});
        show_beside({name, "VDI, facing up", 203.90, natural_up_nusselt(level), 0.16},
                    "sources differ on plates that face up");
        show_beside({name, "VDI, facing down", 39.17, natural_down_nusselt(level), 0.16},
                    "sources differ by 16 to 42 % on plates that face down");
        compare_beside({name, "facing up, Ra 1e6", 17.08, natural_up_nusselt(1e6), 5e-3});
        compare_beside({name, "facing up, Ra 1e8", 69.62, natural_up_nusselt(1e8), 5e-3});
        show_beside(
            {name, "0.52 Ra^0.2, facing down, Ra 1e7", 13.06, natural_down_nusselt(1e7), 0.16},
            "sources differ by 16 to 42 % on plates that face down");
        compare_beside({name, "glass panel 0.71 m, 232 degC in 23 degC [W/m2K]", 7.00,
                        vertical_outside(505.15, 296.15, 0.71, 0), 0.02});
        compare_beside({name, "Squire and Eckert, plate 0.4 m, 313/287 K [W/m2K]", 4.06,
                        vertical_outside(313, 287, 0.4, 0), 0.2});
    }
}

#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/special_functions/bessel.hpp>
#include <cmath>

#include "solver/constants.h"
#include "validation/compare.h"
#include "validation/plate_rings.h"

using namespace drawwell;

namespace {

using boost::math::cyl_bessel_i;

constexpr double rim = 400, room = 300;  // [K]
constexpr double flux = 10e3;            // [W/m2] onto the plate over the bore
constexpr PlateRings usual{.overhang = true};

PlateRings refined(double refine) {
    PlateRings plate = usual;
    plate.refine = refine;
    return plate;
}

/// Excess [K] over the rim of a disc heated over the bore, not cooled.
double heated(double r) {
    const double a = usual.bore_radius, kt = usual.conductivity * usual.thickness;
    if (r >= a) return flux * a * a / (2 * kt) * std::log(usual.radius / r);
    return flux * (a * a - r * r) / (4 * kt) + heated(a);
}

struct Off {
    double over_bore = 0, beyond = 0;  // [-] of the hottest's excess, worst ring
};

/// The middle heated, the rim held.
Off heated_middle(double refine) {
    LaidPlate laid = lay_plate(refined(refine), rim);
    const std::size_t last = laid.rings.size() - 1;  // the overhang keeps the rim's temperature
    laid.hold(last, rim);
    for (std::size_t i = 0; i < laid.over_bore; ++i)
        laid.bench.add_face(laid.rings[i], laid.area(i), [](double) { return -flux; });
    const auto at = laid.bench.run({36000}, 1e-6).back();
    Off off;
    for (std::size_t i = 0; i < last; ++i) {
        double& worst = i < laid.over_bore ? off.over_bore : off.beyond;
        worst = std::max(worst, std::abs(at[i] - rim - heated(laid.node[i])) / heated(0));
    }
    return off;
}

/// Worst node [-] of the rim's excess: the rim held hot, the disc cooled on one face.
double heated_rim(double refine) {
    constexpr double film = 30;  // [W/(m2 K)]
    const double m = std::sqrt(film / (usual.conductivity * usual.thickness));
    LaidPlate laid = lay_plate(refined(refine), room);
    const std::size_t last = laid.rings.size() - 1;
    laid.hold(last, rim);
    for (std::size_t i = 0; i < last; ++i)
        laid.bench.add_face(laid.rings[i], laid.area(i),
                            [](double t) { return film * (t - room); });
    const auto at = laid.bench.run({36000}, 1e-6).back();
    double worst = 0;
    for (std::size_t i = 0; i < last; ++i) {
        const double exact = cyl_bessel_i(0, m * laid.node[i]) / cyl_bessel_i(0, m * usual.radius);
        worst = std::max(worst, std::abs((at[i] - room) / (rim - room) - exact));
    }
    return worst;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a plate heated in its middle, or from its rim, follows the disc's closed forms") {
        const double m = std::sqrt(30 / (40 * 0.003));
        compare({"analytic/heated_disc", "rim over centre, closed form against 0.0610 [-]",
                 std::abs(1 / cyl_bessel_i(0, m * 0.28) - 0.0610), 1e-4});
        const Off usual_rings = heated_middle(1), fine_rings = heated_middle(4);
        compare({"analytic/heated_disc", "heated middle, 8 rings, worst ring beyond the bore [-]",
                 usual_rings.beyond, 0.02});
        show({"analytic/heated_disc", "heated middle, 8 rings, worst over the bore [-]",
              usual_rings.over_bore, 0.02},
             "heat of the innermost ring is led outwards as if from half its radius");
        compare({"analytic/heated_disc", "heated middle, over the bore, 32 rings over 8 [-]",
                 fine_rings.over_bore / usual_rings.over_bore, 0.1});
        compare(
            {"analytic/heated_disc", "heated rim, 8 rings, worst node [-]", heated_rim(1), 0.02});
        compare(
            {"analytic/heated_disc", "heated rim, 32 rings, worst node [-]", heated_rim(4), 2e-3});
    }
}

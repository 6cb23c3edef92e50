#include <doctest/doctest.h>

#include <cmath>

#include "models/laws/enclosure.h"
#include "solver/constants.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/radiating_surfaces";

double emitted(double temperature) {
    return constants::stefan_boltzmann * std::pow(temperature, 4);
}

/// Two black discs of 0.15 m radius 0.2 m apart, the space round them at the second's temperature
/// and black, or a wall that radiates back all it gets. Heat [W] that the first loses.
double disc_loses(bool reradiating) {
    const double area = constants::pi * 0.15 * 0.15, side = 2 * constants::pi * 0.15 * 0.2;
    const double across = coaxial_discs(0.15, 0.15, 0.2), rest = 1 - across;
    const auto exchange =
        exchange_areas({.area = {area, area, side},
                        .emissivity = {1, 1, reradiating ? 0.0 : 1.0},
                        .view_factor = {0, across, rest, across, 0, rest, rest * area / side,
                                        rest * area / side, 1 - 2 * rest * area / side}});
    return exchange[1] * (emitted(1100) - emitted(278));
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("surfaces see and radiate what the worked solutions say") {
        compare_beside({name, "Cengel, discs of 0.15 m at 0.2 m, view factor", 0.2864,
                        coaxial_discs(0.15, 0.15, 0.2), 1e-3});
        compare_beside({name, "discs of 1 m at 1 m, view factor", (3 - std::sqrt(5)) / 2,
                        coaxial_discs(1, 1, 1), 1e-9});
        compare_beside({name, "riser's mouth to plate, view factor", 0.9503,
                        coaxial_discs(0.10, 0.28, 0.06), 1e-3});
        compare_beside(
            {name, "Cengel, black discs, 1100 and 278 K [W]", 1674, disc_loses(false), 1e-3});
        compare_beside(
            {name, "Cengel, the same in a reradiating wall [W]", 3757, disc_loses(true), 1e-3});
        compare_beside({name, "gray body of 0.85, 400 to 305 K [W/m2]", 816.78,
                        0.85 * (emitted(400) - emitted(305)), 1e-4});
        compare_beside(
            {name, "cylinders of 0.15 and 0.29 m, 900 and 500 K [W/m2]", 22871,
             concentric_exchange(0.15, 0.29, 0.8, 0.7) / 0.15 * (emitted(900) - emitted(500)),
             1e-3});
        compare_beside({name, "plates of 0.8, 1000 and 500 K [W/m2]", 35440,
                        parallel_plates_exchange(1, 0.8, 0.8) * (emitted(1000) - emitted(500)),
                        1e-3});
    }
}

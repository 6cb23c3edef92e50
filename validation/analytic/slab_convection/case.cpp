#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "validation/bench.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

// Half thickness, film and material are 1 in the dimensionless equations; these give Biot 1.
constexpr double half = 0.05, conductivity = 1, density = 2000, heat_capacity = 900;
constexpr double film = conductivity / half;                              // [W/(m2 K)]
constexpr double diffusivity = conductivity / (density * heat_capacity);  // [m2/s]
constexpr double first = 400, around = 300;                               // [K]

struct Theta {
    double centre = 0, surface = 0;  // [-] of the first excess over the surroundings
};

/// Series of the symmetric slab; zeta tan zeta = Bi = 1.
Theta series(double fourier) {
    Theta sum;
    for (int n = 0; n < 200; ++n) {
        double low = n * constants::pi, high = low + constants::pi / 2 - 1e-12;
        for (int i = 0; i < 80; ++i) {
            const double middle = (low + high) / 2;
            (middle * std::sin(middle) < std::cos(middle) * 1.0) == (n % 2 == 0) ? low = middle
                                                                                 : high = middle;
        }
        const double zeta = (low + high) / 2;
        const double term =
            4 * std::sin(zeta) / (2 * zeta + std::sin(2 * zeta)) * std::exp(-zeta * zeta * fourier);
        sum.centre += term;
        sum.surface += term * std::cos(zeta);
    }
    return sum;
}

/// The slab whole, both faces cooled, of `cells` cells over its half thickness and one.
Theta computed(std::size_t cells, double fourier) {
    Bench bench;
    const auto slab = bench.add_slab({.thickness = 2 * half,
                                      .conductivity = conductivity,
                                      .density = density,
                                      .heat_capacity = heat_capacity,
                                      .temperature = first,
                                      .cells = 2 * cells + 1});
    for (const SolidId face : {slab.front(), slab.back()})
        bench.add_face(face, 1, [](double t) { return film * (t - around); });
    const auto at = bench.run({fourier * half * half / diffusivity}, 1e-7).back();
    return {(at[cells] - around) / (first - around), (at[0] - around) / (first - around)};
}

double worst(std::size_t cells, double fourier) {
    const Theta seen = computed(cells, fourier), exact = series(fourier);
    return std::max(std::abs(seen.centre - exact.centre), std::abs(seen.surface - exact.surface));
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a slab cooled on both faces follows the series, to second order in its cells") {
        const Theta late = series(0.5), early = series(0.05);
        compare({"analytic/slab_convection", "series against 0.7725, 0.5045, 0.9998, 0.7904 [-]",
                 std::max({std::abs(late.centre - 0.7725), std::abs(late.surface - 0.5045),
                           std::abs(early.centre - 0.9998), std::abs(early.surface - 0.7904)}),
                 1e-4});
        compare({"analytic/slab_convection", "5 cells in the half, Fo 0.5, worst theta [-]",
                 worst(5, 0.5), 5e-3});
        compare({"analytic/slab_convection", "5 cells in the half, Fo 0.05, worst theta [-]",
                 worst(5, 0.05), 2e-2});
        compare({"analytic/slab_convection", "20 cells in the half, Fo 0.05, worst theta [-]",
                 worst(20, 0.05), 1.5e-3});
        compare({"analytic/slab_convection", "order from 10 to 20 cells, difference from 2 [-]",
                 std::abs(std::log2(worst(10, 0.5) / worst(20, 0.5)) - 2), 0.2});
    }
}

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>

#include "models/laws/convection.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/jet_film";

/// Martin's mean Nusselt number within a radius, radius and gap over the nozzle's bore.
double martin(double reynolds, double gap, double radius, double prandtl) {
    const double d = 1 / radius;
    const double spread = d * (1 - 1.1 * d) / (1 + 0.1 * (gap - 6) * d);
    const double flow = 2 * std::sqrt(reynolds) * std::sqrt(1 + 0.005 * std::pow(reynolds, 0.55));
    return std::pow(prandtl, 0.42) * spread * flow;
}

/// The program's, averaged over the same circle.
double mean_within(double reynolds, double gap, double radius, double prandtl) {
    constexpr int rings = 2000;
    double sum = 0;
    for (int i = 0; i < rings; ++i) {
        const double r = radius * (i + 0.5) / rings;
        sum += stagnation_profile(r) * 2 * r / radius / rings;
    }
    return stagnation_nusselt(reynolds, prandtl, gap) * sum;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("the jet under the plate is of the size that Martin gives for wide gaps") {
        compare({name, "Martin's formula against 35.96, Re 1e4, gap 6, radius 5 [-]",
                 share_off(martin(1e4, 6, 5, 0.7), 35.96), 1e-3});
        compare({name, "Martin's formula against 61.47, Re 1e4, gap 2, radius 2.5 [-]",
                 share_off(martin(1e4, 2, 2.5, 0.7), 61.47), 1e-3});
        for (const auto& [reynolds, radius] : {std::pair{2000.0, 2.5}, {4000.0, 2.5}, {1e4, 2.5}})
            compare_beside(
                {name, fmt::format("Martin, gap 2 bores, radius {}, Re {:.0f}", radius, reynolds),
                 martin(reynolds, 2, radius, 0.7), mean_within(reynolds, 2, radius, 0.7), 0.35});
        show_beside({name, "Martin, gap 6 bores, radius 5, Re 1e4", martin(1e4, 6, 5, 0.7),
                     mean_within(1e4, 6, 5, 0.7), 0.35},
                    "a plate wider than any stove's");
        show_beside({name, "Martin, gap 0.36, radius 1.6, Re 4000: outside it",
                     martin(4000, 0.36, 1.6, 0.7), mean_within(4000, 0.36, 1.6, 0.7), 0.35},
                    "outside the range of Martin's formula");
    }
}

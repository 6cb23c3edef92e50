#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "models/laws/friction.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/friction";

double factor(double reynolds, double roughness) {
    return friction_times_reynolds({.reynolds = reynolds, .rough = haaland_roughness(roughness)}) /
           reynolds;
}

/// Colebrook's formula, by repeated substitution.
double colebrook(double reynolds, double roughness) {
    double root = 6;  // 1/sqrt of the factor
    for (int i = 0; i < 60; ++i) root = -2 * std::log10(2.51 * root / reynolds + roughness / 3.71);
    return 1 / (root * root);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("ducts rub as Colebrook and the exact laminar solutions say") {
        compare_beside({name, "Darcy factor at Re 128", 0.5, factor(128, 0), 1e-9});
        compare_beside(
            {name, "Haaland, Re 1e5, roughness 1e-4", 0.018265, factor(1e5, 1e-4), 1e-3});
        compare_beside({name, "Colebrook, the same", 0.018514, factor(1e5, 1e-4), 0.02});
        compare_beside(
            {name, "Haaland, Re 1e4, 1 mm in 150 mm", 0.03940, factor(1e4, 1 / 150.0), 1e-3});
        compare_beside({name, "Colebrook, the same", 0.03954, factor(1e4, 1 / 150.0), 0.02});
        compare_beside({name, "Blasius, smooth, Re 1e4", 0.03164, factor(1e4, 0), 0.03});
        double worst = 0;
        for (const double reynolds : {4e3, 1e4, 3e4, 1e5, 1e6})
            for (const double roughness : {0.0, 1e-4, 1e-3, 1 / 150.0, 0.02})
                worst = std::max(
                    worst, share_off(factor(reynolds, roughness), colebrook(reynolds, roughness)));
        compare({name, "Colebrook, Re 4e3 to 1e6, smooth to 3 mm in 150, worst share off [-]",
                 worst, 0.025});
        for (const auto& [k, constant] :
             {std::pair{0.1, 89.37}, {0.25, 93.21}, {0.5, 95.25}, {0.8, 95.92}})
            worst = std::max(k > 0.1 ? worst : 0, share_off(annulus_laminar_constant(k), constant));
        compare({name, "laminar annuli of 0.1 to 0.8, worst share off [-]", worst, 2e-4});
        compare_beside({name, "laminar square", 56.9, rectangle_laminar_constant(1), 2e-3});
        show_beside({name, "chimney rule 0.4 L/D, Re 5000, 1 mm in 150 mm", 0.4,
                     factor(5000, 1 / 150.0), 0.2},
                    "a rule for seams, soot and oversize together");
        show_beside({name, "slow flow taken as Re 2300, at Re 1000, 1 mm in 150 mm",
                     colebrook(2300, 1 / 150.0), factor(1000, 1 / 150.0), 0.2},
                    "the program goes by the laminar law");
    }
}

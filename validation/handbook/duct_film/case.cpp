#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "models/laws/convection.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/duct_film";
constexpr double long_duct = 1e9;  // [-] diameters

// Why a row may miss.
constexpr auto heat_alone = "Hausen lets only heat develop, not the flow";
constexpr auto smooth =
    "the standard lets rough walls pass more heat, the program takes smooth ones";
constexpr auto as_duct = "the program takes the space round the riser as a duct";

/// A laminar duct at a Graetz number Re Pr D/L.
double at_graetz(double graetz, double prandtl) {
    return duct_nusselt_mean(1000, prandtl, 1000 * prandtl / graetz);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("films in ducts are those of the handbooks, as far as these agree") {
        compare_beside({name, "long laminar duct", 3.66, at_graetz(1e-3, 0.7), 2e-3});
        compare_beside(
            {name, "Baehr and Stephan, Gz 11000, Pr 1.1", 72.65, at_graetz(11000, 1.1), 1e-3});
        double worst = 0;
        for (const auto& [graetz, nusselt] :
             {std::pair{10.0, 4.547}, {100.0, 9.122}, {250.0, 13.323}})
            worst = std::max(worst, share_off(at_graetz(graetz, 0.7), nusselt));
        compare({name, "Baehr and Stephan, Gz 10 to 250, worst share off [-]", worst, 1e-3});
        show_beside({name, "Hausen, Gz 10, heat alone develops", 4.223, at_graetz(10, 0.7), 0.1},
                    heat_alone);
        show_beside({name, "Hausen, Gz 250, the same", 10.114, at_graetz(250, 0.7), 0.1},
                    heat_alone);

        const double fast = duct_nusselt_mean(1e4, 0.7, long_duct);
        compare_beside({name, "Gnielinski, Re 1e4", 29.82, fast, 1e-3});
        compare_beside(
            {name, "Gnielinski, Re 5000", 16.62, duct_nusselt_mean(5000, 0.7, long_duct), 1e-3});
        compare_beside({name, "Dittus and Boelter, Re 1e4, cooling", 32.75, fast, 0.1});
        compare_beside({name, "EN 13384-1, smooth, Re 1e4, 5 m of 150 mm", 30.18,
                        duct_nusselt_mean(1e4, 0.7, 5 / 0.15), 0.1});
        show_beside({name, "EN 13384-1, 1 mm rough, Re 1e4, the same", 35.62,
                     duct_nusselt_mean(1e4, 0.7, 5 / 0.15), 0.1},
                    smooth);
        show_beside({name, "EN 13384-1, 1 mm rough, Re 5000, the same", 18.42,
                     duct_nusselt_mean(5000, 0.7, 5 / 0.15), 0.1},
                    smooth);

        // What entering adds to a long duct's mean: 1 + (D/L)^(2/3).
        compare_beside({name, "entry, ten diameters over a long duct, Re 1e4",
                        1 + std::pow(10, -2.0 / 3), duct_nusselt_mean(1e4, 0.7, 10) / fast, 1e-3});

        // The space round the riser: the program takes a duct of its hydraulic diameter.
        const double slow = duct_nusselt_mean(1000, 0.7, long_duct);
        show_beside({name, "laminar annulus of 0.5, inner wall", 5.74, slow, 0.1}, as_duct);
        show_beside({name, "laminar annulus of 0.5, outer wall", 4.43, slow, 0.1}, as_duct);
        show_beside(
            {name, "turbulent annulus of 0.5, inner wall, Re 1e4", 0.961 * 29.82, fast, 0.1},
            as_duct);
        show_beside(
            {name, "turbulent annulus of 0.5, outer wall, Re 1e4", 0.908 * 29.82, fast, 0.1},
            as_duct);
    }
}

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>

#include "models/laws/natural_convection.h"
#include "models/laws/outside.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/wind";
constexpr double prandtl = 0.7;

/// Hilpert, cylinder across the wind: C Re^m Pr^(1/3).
double hilpert(double reynolds) {
    const double c = reynolds < 4000 ? 0.683 : reynolds < 40000 ? 0.193 : 0.027;
    const double m = reynolds < 4000 ? 0.466 : reynolds < 40000 ? 0.618 : 0.805;
    return c * std::pow(reynolds, m) * std::cbrt(prandtl);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("wind cools pipes and plates as other correlations say") {
        for (const double reynolds : {1e3, 1e4, 3e4, 1e5})
            compare_beside({name, fmt::format("Hilpert, cylinder, Re {:.0e}", reynolds),
                            hilpert(reynolds), wind_cylinder_nusselt(reynolds, prandtl), 0.2});
        compare_beside({name, "turbulent plate from its edge, 0.037 Re^0.8, Re 1e6",
                        0.037 * std::pow(1e6, 0.8) * std::cbrt(prandtl),
                        wind_plate_nusselt(1e6, prandtl), 0.15});
        show_beside(
            {name, "laminar plate in still-running air, 0.664 Re^0.5, Re 1e4",
             0.664 * std::sqrt(1e4) * std::cbrt(prandtl), wind_plate_nusselt(1e4, prandtl), 0.15},
            "the program takes gusty air, turbulent from the plate's edge");
        // A flue of 150 mm in 5 m/s at 100 degC, and the fixed coefficient of chimney reckoning.
        const double film = upright_pipe_outside(373, 283, {5, 0.15}, 5);
        const AirFilm air = air_properties(328);
        compare_beside({name, "Hilpert, 150 mm flue in 5 m/s [W/m2K]",
                        hilpert(5 * 0.15 / air.kinematic_viscosity) * air.conductivity / 0.15, film,
                        0.2});
        show_beside(
            {name, "EN 13384-1, outdoors, the same without radiation [W/m2K]", 23, film, 0.2},
            "the standard's coefficient stands for wind and radiation together");
    }
}

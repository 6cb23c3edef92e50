#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/read_library.h"
#include "solver/constants.h"
#include "solver/enthalpy_curve.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/steel";
constexpr double ice = constants::ice_point;

/// EN 1993-1-2, carbon steel: heat capacity [J/(kg K)] and conductivity [W/(m K)] at degC.
double capacity(double t) {
    if (t < 600) return 425 + 0.773 * t - 1.69e-3 * t * t + 2.22e-6 * t * t * t;
    if (t < 735) return 666 + 13002 / (738 - t);
    if (t < 900) return 545 + 17820 / (t - 731);
    return 650;
}
double conductivity(double t) {
    return t < 800 ? 54 - 0.0333 * t : 27.3;
}

/// Heat [J/kg] from 20 degC, in steps of a hundredth of a kelvin.
double heat_to(double celsius) {
    constexpr double step = 0.01;
    double sum = 0;
    for (double t = 20 + step / 2; t < celsius; t += step) sum += capacity(t) * step;
    return sum;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("the steels of the data stand for those of the structural standard") {
        const Library library = read_library();
        const Material& steel = library.materials.at("mild_steel");
        double heat = 0, conducts = 0;
        for (const double t : {20, 100, 200, 300, 400, 500, 600, 650, 700, 780, 800, 900}) {
            heat = std::max(heat, share_off(steel.heat_capacity(t + ice), capacity(t)));
            conducts = std::max(conducts, share_off(steel.conductivity(t + ice), conductivity(t)));
        }
        compare({name, "mild steel, heat capacity off the peak, worst share off [-]", heat, 0.02});
        compare({name, "mild steel, conductivity, worst share off [-]", conducts, 3e-3});
        const EnthalpyCurve curve(steel.heat_capacity);
        const auto stored = [&](double t) {
            return (curve.enthalpy(t + ice) - curve.enthalpy(20 + ice)) / 1000;
        };
        compare_beside({name, "heat from 20 to 800 degC [kJ/kg]", 561.6, stored(800), 2e-3});
        for (const double t : {200, 400, 600, 735, 900})
            compare_beside({name, fmt::format("heat from 20 to {:.0f} degC [kJ/kg]", t),
                            heat_to(t) / 1000, stored(t), 5e-3});
        show_beside(
            {name, "emissivity of the fire standard, used mild steel", 0.7, steel.emissivity, 0.1},
            "the standard's figure stands for steel in a fire; oxidised sheet radiates more");
        compare_beside({name, "tables, steel oxidised at 200 to 600 degC, emissivity", 0.80,
                        steel.emissivity, 0.05});
        compare_beside({name, "density [kg/m3]", 7850, steel.density, 1e-6});

        const Material& stainless = library.materials.at("stainless_304");
        heat = conducts = 0;
        for (double t = 20; t <= 1000; t += 20) {
            heat =
                std::max(heat, share_off(stainless.heat_capacity(t + ice),
                                         450 + 0.280 * t - 2.91e-4 * t * t + 1.34e-7 * t * t * t));
            conducts =
                std::max(conducts, share_off(stainless.conductivity(t + ice), 14.6 + 1.27e-2 * t));
        }
        compare({name, "stainless 304, heat capacity, worst share off [-]", heat, 5e-3});
        compare({name, "stainless 304, conductivity, worst share off [-]", conducts, 1e-3});
    }
}

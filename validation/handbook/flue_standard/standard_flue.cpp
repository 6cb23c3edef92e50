#include "validation/handbook/flue_standard/standard_flue.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "solver/constants.h"
#include "solver/table.h"

namespace drawwell {
namespace {

constexpr double air_constant = 288, wood_gas_constant = 286.6;  // [J/(kg K)]

/// Colebrook's factor by the standard's custom that nothing flows slower than Re 2300.
double friction(double reynolds, double roughness) {
    const double re = std::max(reynolds, 2300.0);
    double root = 6;
    for (int i = 0; i < 60; ++i) root = -2 * std::log10(2.51 * root / re + roughness / 3.71);
    return 1 / (root * root);
}

}  // namespace

double standard_nusselt(double reynolds, double prandtl, double roughness, double bore,
                        double length) {
    const double re = std::max(reynolds, 2300.0);
    return std::pow(friction(re, roughness / bore) / friction(re, 0), 0.67) * 0.0214 *
           (std::pow(re, 0.8) - 100) * std::pow(prandtl, 0.4) * (1 + std::pow(bore / length, 0.67));
}

double standard_overall(double inside, double wall_resistance, double outer_over_inner,
                        double outside) {
    return 1 / (1 / inside + wall_resistance + 1 / (outer_over_inner * outside));
}

std::pair<double, double> standard_cooling(double cooling, double entering, double around) {
    const double excess = entering - around;
    return {around + excess * -std::expm1(-cooling) / cooling,
            around + excess * std::exp(-cooling)};
}

StandardAnswer standard_answer(const StandardFlue& flue) {
    // Wood gas at air ratio 2 [J/(kg K)]: the standard's coefficients for wood were not to be had.
    const Table wood_gas({293.15, 473.15, 673.15, 873.15}, {1047, 1090, 1145, 1204});
    const double section = constants::pi / 4 * flue.bore * flue.bore;
    double mean = flue.entering, top = flue.entering, factor = 0;
    for (int i = 0; i < 50; ++i) {
        const double t = mean - constants::ice_point;
        const double conductivity = 0.0223 + 0.000065 * t;
        const double viscosity = 15e-6 + 47e-9 * t - 20e-12 * t * t;
        const double cp = flue.air ? 1011 + 0.05 * t + 0.0003 * t * t : wood_gas(mean);
        const double prandtl = viscosity * cp / conductivity;
        const double reynolds = flue.flow * flue.bore / (section * viscosity);
        factor = friction(reynolds, flue.roughness / flue.bore);
        const double inside =
            standard_nusselt(reynolds, prandtl, flue.roughness, flue.bore, flue.length) *
            conductivity / flue.bore;
        const double overall = standard_overall(inside, flue.wall_resistance, flue.outer_over_inner,
                                                flue.film_outside);
        std::tie(mean, top) =
            standard_cooling(constants::pi * flue.bore * overall * flue.length / (flue.flow * cp),
                             flue.entering, flue.around);
    }
    const double gas_constant = flue.air ? air_constant : wood_gas_constant;
    const double pressure = constants::standard_pressure;
    const auto density = [&](double t) { return pressure / (gas_constant * t); };
    const auto head = [&](double t) {  // [Pa] of the gas's velocity
        const double flux = flue.flow / section;
        return flux * flux / (2 * density(t));
    };
    return {top,
            constants::gravity * flue.length *
                (pressure / (air_constant * flue.around) - density(mean)),
            factor * flue.length / flue.bore * head(mean) + head(top) +
                2 * (head(top) - head(flue.entering))};
}

}  // namespace drawwell

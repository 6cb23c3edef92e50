#include "models/laws/natural_convection.h"

#include <algorithm>
#include <cmath>

#include "models/laws/cube_root.h"

namespace drawwell {
namespace {

/// Fourth root of 1 + (coefficient Ra^(1/4))^4.
double quarter_law(double coefficient, double rayleigh) {
    const double c2 = coefficient * coefficient;
    return std::sqrt(std::sqrt(1 + c2 * c2 * std::max(rayleigh, 0.0)));
}

double prandtl_factor(double scale, double prandtl) {
    return 0.387 * std::pow(1 + std::pow(scale / prandtl, 9.0 / 16), -8.0 / 27);
}

double churchill_chu(double floor, double factor, double rayleigh) {
    const double root = floor + factor * std::sqrt(cube_root(rayleigh));
    return root * root;
}

}  // namespace

double natural_vertical_nusselt(double rayleigh, double prandtl) {
    return natural_vertical_nusselt_by_factor(rayleigh, vertical_prandtl_factor(prandtl));
}

double natural_vertical_nusselt_by_factor(double rayleigh, double factor) {
    return churchill_chu(0.825, factor, rayleigh);
}

double vertical_prandtl_factor(double prandtl) {
    return prandtl_factor(0.492, prandtl);
}

double natural_cylinder_nusselt(double rayleigh, double prandtl) {
    return churchill_chu(0.60, prandtl_factor(0.559, prandtl), rayleigh);
}

double natural_up_nusselt(double rayleigh) {
    return std::max(quarter_law(0.54, rayleigh), 0.15 * cube_root(std::max(rayleigh, 0.0)));
}

double natural_down_nusselt(double rayleigh) {
    return quarter_law(0.27, rayleigh);
}

double wind_plate_nusselt(double reynolds, double prandtl) {
    if (!(reynolds > 0)) return 0;
    const double p = cube_root(prandtl);
    const double laminar = 0.664 * std::sqrt(reynolds) * p;
    // Below Re 10 the turbulent branch is meaningless and its denominator may vanish.
    const double re = std::max(reynolds, 10.0);
    const double tenth = std::pow(re, -0.1);
    const double turbulent =
        0.037 * re * tenth * tenth * prandtl / (1 + 2.443 * tenth * (p * p - 1)) * (reynolds / re);
    return std::hypot(laminar, turbulent);
}

double wind_cylinder_nusselt(double reynolds, double prandtl) {
    if (!(reynolds > 0)) return 0.3;
    const double p = cube_root(prandtl);
    const double thin = cube_root(0.4 / prandtl);
    const double thick = std::sqrt(std::sqrt(1 + thin * thin));
    const double root = std::sqrt(reynolds / 282000);
    return 0.3 + 0.62 * std::sqrt(reynolds) * p / thick *
                     std::pow(1 + root * std::sqrt(std::sqrt(root)), 0.8);
}

}  // namespace drawwell

#include "models/laws/natural_convection.h"

#include <algorithm>
#include <cmath>

namespace drawwell {
namespace {

/// Fourth root of 1 + (coefficient Ra^(1/4))^4.
double quarter_law(double coefficient, double rayleigh) {
    const double c2 = coefficient * coefficient;
    return std::sqrt(std::sqrt(1 + c2 * c2 * std::max(rayleigh, 0.0)));
}

double churchill_chu(double floor, double prandtl_scale, double rayleigh, double prandtl) {
    const double part = std::pow(prandtl_scale / prandtl, 9.0 / 16);
    const double root = floor + 0.387 * std::sqrt(std::cbrt(std::max(rayleigh, 0.0))) *
                                    std::pow(1 + part, -8.0 / 27);
    return root * root;
}

}  // namespace

double natural_vertical_nusselt(double rayleigh, double prandtl) {
    return churchill_chu(0.825, 0.492, rayleigh, prandtl);
}

double natural_cylinder_nusselt(double rayleigh, double prandtl) {
    return churchill_chu(0.60, 0.559, rayleigh, prandtl);
}

double natural_up_nusselt(double rayleigh) {
    return std::max(quarter_law(0.54, rayleigh), 0.15 * std::cbrt(std::max(rayleigh, 0.0)));
}

double natural_down_nusselt(double rayleigh) {
    return quarter_law(0.27, rayleigh);
}

double wind_plate_nusselt(double reynolds, double prandtl) {
    if (!(reynolds > 0)) return 0;
    const double p = std::cbrt(prandtl);
    const double laminar = 0.664 * std::sqrt(reynolds) * p;
    // Below Re 10 the turbulent branch is meaningless and its denominator may vanish.
    const double re = std::max(reynolds, 10.0);
    const double turbulent = 0.037 * std::pow(re, 0.8) * prandtl /
                             (1 + 2.443 * std::pow(re, -0.1) * (p * p - 1)) * (reynolds / re);
    return std::hypot(laminar, turbulent);
}

double wind_cylinder_nusselt(double reynolds, double prandtl) {
    if (!(reynolds > 0)) return 0.3;
    const double p = std::cbrt(prandtl);
    const double thick = std::sqrt(std::sqrt(1 + std::pow(0.4 / prandtl, 2.0 / 3)));
    return 0.3 + 0.62 * std::sqrt(reynolds) * p / thick *
                     std::pow(1 + std::pow(reynolds / 282000, 0.625), 0.8);
}

}  // namespace drawwell

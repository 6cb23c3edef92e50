#include "models/laws/friction.h"

#include <algorithm>
#include <cmath>

#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double laminar_end = 2300;
constexpr double turbulent_start = 4000;

double haaland_times_reynolds(double re, double rough) {
    const double root = -1.8 * std::log10(rough + 6.9 / re);
    return re / (root * root);
}

}  // namespace

double haaland_roughness(double relative_roughness) {
    return relative_roughness > 0 ? std::pow(relative_roughness / 3.7, 1.11) : 0;
}

double friction_times_reynolds(const DuctFriction& duct) {
    const double re = std::abs(duct.reynolds);
    if (re <= laminar_end) return duct.laminar_constant;
    const double turbulent = haaland_times_reynolds(re, duct.rough);
    if (re >= turbulent_start) return turbulent;
    const double s = (re - laminar_end) / (turbulent_start - laminar_end);
    const double share = s * s * (3 - 2 * s);
    return duct.laminar_constant + share * (turbulent - duct.laminar_constant);
}

double annulus_laminar_constant(double k) {
    if (!(k >= 0 && k <= 1))
        throw InputError("an annulus's inner over outer diameter lies in 0..1");
    if (k == 0) return 64;
    if (1 - k < 1e-3) return 96;  // the formula loses its digits; plates are 2e-8 off
    return 64 * (1 - k) * (1 - k) / (1 + k * k + (1 - k * k) / std::log(k));
}

double rectangle_laminar_constant(double aspect) {
    if (!(aspect > 0)) throw InputError("a rectangle's aspect must be above 0");
    const double a = std::min(aspect, 1 / aspect);
    return 96 * (1 + a * (-1.3553 + a * (1.9467 + a * (-1.7012 + a * (0.9564 - a * 0.2537)))));
}

}  // namespace drawwell

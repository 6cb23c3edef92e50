#include "validation/handbook/gas_emissivity/leckner.h"

#include <algorithm>
#include <cmath>

namespace drawwell {
namespace {

/// Emissivity at vanishing partial pressure: exp of a polynomial in t = T/1000 K and the decimal
/// logarithm of the pressure path [bar cm].
template <std::size_t rows, std::size_t columns>
double zero(const double (&c)[rows][columns], double t, double lg) {
    double sum = 0, lg_power = 1;
    for (std::size_t i = 0; i < rows; ++i, lg_power *= lg) {
        double t_power = 1;
        for (std::size_t j = 0; j < columns; ++j, t_power *= t) sum += c[i][j] * t_power * lg_power;
    }
    return std::exp(sum);
}

/// Ratio of the emissivity to that at vanishing partial pressure.
double broadened(double a, double b, double c, double pressure, double at_most, double path) {
    const double off = std::log10(at_most / path);
    return 1 - (a - 1) * (1 - pressure) / (a + b - 1 + pressure) * std::exp(-c * off * off);
}

}  // namespace

double leckner_water(const LecknerGas& gas) {
    constexpr double c[3][3] = {
        {-2.2118, -1.1987, 0.035596}, {0.85667, 0.93048, -0.14391}, {-0.10838, -0.17156, 0.045915}};
    const double t = gas.temperature / 1000, path = gas.water * gas.way * 100;
    const double a = t < 0.75 ? 2.144 : 1.888 - 2.053 * std::log10(t);
    return zero(c, t, std::log10(path)) * broadened(a, 1.10 / std::pow(t, 1.4), 0.5,
                                                    1 + 2.56 * gas.water / std::sqrt(t),
                                                    13.2 * t * t, path);
}

double leckner_dioxide(const LecknerGas& gas) {
    constexpr double c[3][4] = {{-3.9893, 2.7669, -2.1081, 0.39163},
                                {1.2710, -1.1090, 1.0195, -0.21897},
                                {-0.23678, 0.19731, -0.19544, 0.044644}};
    const double t = gas.temperature / 1000, path = gas.dioxide * gas.way * 100;
    const double at_most = t < 0.7 ? 0.054 / (t * t) : 0.225 * t * t;
    return zero(c, t, std::log10(path)) * broadened(1 + 0.1 / std::pow(t, 1.45), 0.23, 1.47,
                                                    1 + 0.28 * gas.dioxide, at_most, path);
}

double leckner_emissivity(const LecknerGas& gas) {
    const double z = gas.water / (gas.water + gas.dioxide);
    const double lg = std::log10((gas.water + gas.dioxide) * gas.way * 100);
    const double overlap =
        lg > 0 ? (z / (10.7 + 101 * z) - 0.0089 * std::pow(z, 10.4)) * std::pow(lg, 2.76) : 0;
    return leckner_water(gas) + leckner_dioxide(gas) - overlap;
}

}  // namespace drawwell

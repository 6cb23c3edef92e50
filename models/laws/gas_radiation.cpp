#include "models/laws/gas_radiation.h"

#include <algorithm>
#include <cmath>

#include "solver/errors.h"

namespace drawwell {
namespace {

struct GrayGas {
    double absorption;                         // [1/(atm m)]
    double weight, weight1, weight2, weight3;  // polynomial in T [K]
};
// Smith, Shen and Friedman (1982), ratio of water vapour to carbon dioxide 1.
constexpr GrayGas gray_gases[] = {{0.4303, 5.150e-1, -2.303e-4, 0.9779e-7, -1.494e-11},
                                  {7.055, 0.7749e-1, 3.399e-4, -2.297e-7, 3.770e-11},
                                  {178.1, 1.907e-1, -1.824e-4, 0.5608e-7, -0.5122e-11}};

/// The polygamma function of order three at z >= 1: 6 times the sum of 1/(z + k)^4, the tail by its
/// asymptotic series; 1e-9.
constexpr double psi3(double z) {
    double sum = 0;
    for (int k = 0; k < 5; ++k, z += 1) sum += 6 / (z * z * z * z);
    const double w = 1 / z, w2 = w * w;
    return sum + w * w2 * (2 + w * (3 + w * (2 - w2 * (1 - w2 * (4.0 / 3 - 3 * w2)))));
}

}  // namespace

double gas_emissivity(double temperature, double pressure_length) {
    const double t = std::clamp(temperature, 600.0, 2400.0);
    const double pl = std::max(pressure_length, 0.0);
    double emissivity = 0;
    for (const GrayGas& g : gray_gases)
        emissivity += (g.weight + t * (g.weight1 + t * (g.weight2 + t * g.weight3))) *
                      (1 - std::exp(-g.absorption * pl));
    return emissivity;
}

double soot_emissivity(double volume_fraction, double temperature, double beam_length) {
    constexpr double second_radiation = 0.014388;  // [m K]
    const double thickness = 5 * volume_fraction * temperature * beam_length / second_radiation;
    // psi3(1) is pi^4 / 15; the function's own value makes clear gas exactly clear.
    constexpr double scale = 1 / psi3(1);
    return thickness > 0 ? 1 - scale * psi3(1 + thickness) : 0;
}

double combined_emissivity(double gas, double soot) {
    return gas + soot - gas * soot;
}

double mean_beam_length(double volume, double area) {
    if (!(volume > 0 && area > 0)) throw InputError("a gas volume and its area must be above 0");
    return 3.6 * volume / area;
}

}  // namespace drawwell

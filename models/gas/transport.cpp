#include "models/gas/transport.h"

#include <cmath>

#include "solver/constants.h"

namespace drawwell {
namespace {

/// mu = mu0 (T/T0)^1.5 (T0 + S)/(T + S).
struct Sutherland {
    double viscosity;    // [Pa s] mu0
    double reference;    // [K] T0
    double temperature;  // [K] S
    double molar_mass;   // [kg/mol]
};
// White, Viscous Fluid Flow, from memory. Nitrogen with the air's argon in its molar mass.
// Volatiles as carbon dioxide with formaldehyde's molar mass (our choice: they are a few percent of
// the gas, and only near the fire).
constexpr std::array<Sutherland, species_count> law{{{1.663e-5, 273, 107, 28.155e-3},
                                                     {1.919e-5, 273, 139, 31.998e-3},
                                                     {1.370e-5, 273, 222, 44.009e-3},
                                                     {1.12e-5, 350, 1064, 18.015e-3},
                                                     {1.657e-5, 273, 136, 28.010e-3},
                                                     {1.370e-5, 273, 222, 30.026e-3}}};

struct Prepared {
    double weight;  // 1 / sqrt(M): turns a mass fraction into moles times sqrt(M)
    double factor;  // mu = factor T^1.5 / (T + S), already times weight
    double moles;   // 1 / M
};

std::array<Prepared, species_count> prepare() {
    std::array<Prepared, species_count> out{};
    for (std::size_t i = 0; i < species_count; ++i) {
        const Sutherland& s = law[i];
        const double weight = 1 / std::sqrt(s.molar_mass);
        out[i] = {weight,
                  weight * s.viscosity * (s.reference + s.temperature) / std::pow(s.reference, 1.5),
                  1 / s.molar_mass};
    }
    return out;
}

}  // namespace

Transport transport(const Composition& mass_fraction, double temperature, double heat_capacity) {
    static const std::array<Prepared, species_count> prepared = prepare();
    double weighted = 0, weights = 0, moles = 0;
    for (std::size_t i = 0; i < species_count; ++i) {
        const double y = mass_fraction[i];
        weighted += y * prepared[i].factor / (temperature + law[i].temperature);
        weights += y * prepared[i].weight;
        moles += y * prepared[i].moles;
    }
    const double viscosity = weighted / weights * temperature * std::sqrt(temperature);
    const double gas_constant = constants::molar_gas * moles;
    // Modified Eucken: k M / (mu cv) = 1.32 + 1.77 R / cv.
    return {viscosity, viscosity * (1.32 * (heat_capacity - gas_constant) + 1.77 * gas_constant)};
}

}  // namespace drawwell

#pragma once

#include <array>

#include "models/laws/range.h"

namespace drawwell {

/// Of the polynomials below; 5 % outside is our choice.
inline constexpr Range mixture_range{"heat capacity of gas", "temperature", "K", 200, 3500, 0.05};

/// Thermodynamics of one gas composition: an ideal mixture of ideal gases, NASA seven-coefficient
/// polynomials with a break at 1000 K, combined once per kilogram of mixture.
/// Above 3500 K heat capacity goes on linearly; below 200 K it grows as 1/T, so that every
/// enthalpy has exactly one, positive, temperature.
class Mixture {
  public:
    /// Enthalpy h = c[5] + c[0] T + c[1] T^2 + ... + c[4] T^5 [J/kg].
    using Polynomial = std::array<double, 6>;

    /// `low` holds from 200 to 1000 K, `high` to 3500 K; gas constant in J/(kg K).
    Mixture(const Polynomial& low, const Polynomial& high, double gas_constant)
        : low_(low), high_(high), gas_constant_(gas_constant) {}

    double gas_constant() const { return gas_constant_; }  // [J/(kg K)]
    double heat_capacity(double temperature) const;        // [J/(kg K)]
    /// [J/kg] with heat of formation; zero: the elements at 298.15 K.
    double enthalpy(double temperature) const;
    /// Temperature [K] of an enthalpy [J/kg], by safeguarded Newton steps to 1e-10 of itself.
    double temperature(double enthalpy, double guess) const;
    /// [kg/m3] at a temperature [K] and pressure [Pa].
    double density(double temperature, double pressure) const {
        return pressure / (gas_constant_ * temperature);
    }

  private:
    Polynomial low_, high_;
    double gas_constant_;
};

}  // namespace drawwell

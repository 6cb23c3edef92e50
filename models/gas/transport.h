#pragma once

#include "models/laws/range.h"
#include "solver/gas_state.h"

namespace drawwell {

struct Transport {
    double viscosity = 0;     // [Pa s]
    double conductivity = 0;  // [W/(m K)]
};

/// Viscosity by Sutherland's law per species (constants from memory of White, Viscous Fluid Flow)
/// mixed after Herning and Zipperer; conductivity by the modified Eucken relation of the mixture.
/// `heat_capacity` [J/(kg K)] of the mixture; temperature in K, above zero.
/// Within 3 % of Wilke's mixing for flue gas; within 3 % of air tables in viscosity and 4 % in
/// conductivity from 300 to 1300 K, 5 % over one of them at 293 K.
Transport transport(const Composition& mass_fraction, double temperature, double heat_capacity);
/// 10 % outside is our choice.
inline constexpr Range transport_range{
    "viscosity and conductivity of gas", "temperature", "K", 300, 1300, 0.1};

}  // namespace drawwell

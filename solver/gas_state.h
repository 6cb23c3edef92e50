#pragma once

#include <array>
#include <cstddef>

namespace drawwell {

/// What the gas is made of, in the order of every composition.
enum Species : std::size_t { n2, o2, co2, h2o, co, volatiles };
inline constexpr std::size_t species_count = 6;

/// Mass fractions [-], summing to one; or mass flows [kg/s] of each species.
using Composition = std::array<double, species_count>;

/// The flame a gas belongs to: how it burns on depends on where and in what air it began.
struct Flame {
    double path = 0;    // [m] way gone since the fire
    double length = 0;  // [m] of the flame, from its fire
    double oxygen = 0;  // [-] oxygen at its start, per kilogram of this gas
};

/// What a kilogram of gas carries from passage to passage.
struct GasState {
    double enthalpy = 0;          // [J/kg] with heat of formation; zero: the elements at 298.15 K
    Composition mass_fraction{};  // [-]
    Flame flame{};
    double temperature = 300;  // [K] about; where to begin when it is worked out exactly
};

}  // namespace drawwell

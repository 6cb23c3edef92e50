#pragma once

#include "models/laws/range.h"

namespace drawwell {

/// Emissivity [-] of water vapour and carbon dioxide in equal parts at one atmosphere; `pressure
/// length` [atm m] of both together times the mean beam length. Weighted sum of gray gases of
/// Smith, Shen and Friedman (1982), read in code listings; 600 to 2400 K and 0.001 to 10 atm
/// m, weights held at the range's ends beyond.
double gas_emissivity(double temperature, double pressure_length);
/// 30 % outside is our choice.
inline constexpr Range gas_radiation_range{"gas radiation", "temperature", "K", 600, 2400, 0.3};
inline constexpr Range gas_radiation_path_range{
    "gas radiation", "pressure path", "atm m", 0.001, 10, 0.3};

/// Emissivity [-] of a cloud of soot, from its volume fraction [-], temperature [K] and mean beam
/// length [m]; Felske and Tien's closed form with C0 = 5, from memory.
double soot_emissivity(double volume_fraction, double temperature, double beam_length);

/// Both in the same space [-]: a + b - a b.
double combined_emissivity(double gas, double soot);

/// Mean beam length [m] of a gas volume [m3] inside an area [m2]: 3.6 V/A (Hottel, from memory).
double mean_beam_length(double volume, double area);

}  // namespace drawwell

#pragma once

#include <string_view>
#include <vector>

#include "models/laws/bead.h"
#include "models/stove.h"
#include "solver/results.h"

namespace drawwell {

/// Whether a column is the temperature of gas, which a thermocouple reads by way of its bead.
bool is_gas_temperature(std::string_view column);

/// What a thermocouple reads [K] at each instant of a burn, its bead in the cell of a column of gas
/// temperature: late, and between gas and walls. The stream there is what leaves by the flue, over
/// the duct's section; the walls are those of the same cell, round the riser half riser's skin,
/// half barrel. It begins as warm as the gas.
std::vector<double> bead_readings(const Results& results, const Stove& stove,
                                  std::string_view column, std::size_t cell, const Bead& bead);

}  // namespace drawwell

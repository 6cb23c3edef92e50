#pragma once

#include "models/fire/bed_constants.h"
#include "solver/fire.h"

namespace drawwell {

/// Oxygen [kg] that a kilogram of char takes, part of its carbon leaving as carbon monoxide.
double oxygen_per_char(const BedConstants& bed);

/// Rate [kg/s] at which so much char [kg] burns in that air: kinetics and transfer in series at its
/// surface, saturating at the oxygen that arrives.
double char_rate(double char_mass, const Arriving& air, const BedConstants& bed);

/// Slope of that rate over the char [1/s].
double char_rate_slope(double char_mass, const Arriving& air, const BedConstants& bed);

}  // namespace drawwell

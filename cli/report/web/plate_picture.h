#pragma once

#include <string>

#include "solver/results.h"

namespace drawwell {

/// The plate over the burn as SVG: time to the right, distance from the centre upwards, each ring
/// at each moment in the colour of the band it cooks in. Empty: no plate. Carries the minutes of
/// its edges (`data-from`, `data-to`), so that a script can place a cursor.
std::string plate_picture(const Results& results);

/// What its colours mean, as an HTML list.
std::string band_key();

}  // namespace drawwell

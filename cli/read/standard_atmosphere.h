#pragma once

namespace drawwell {

/// Air pressure [Pa] at an altitude [m] above the sea, -500 to 11000 m.
/// International Standard Atmosphere: p = p0 (1 - 0.0065 K/m h / 288.15 K)^5.25588 (from memory of
/// ISO 2533).
double standard_pressure_at(double altitude);

/// The altitude [m] at which the standard atmosphere has this pressure [Pa].
double standard_altitude(double pressure);

}  // namespace drawwell

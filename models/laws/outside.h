#pragma once

#include "models/laws/range.h"

namespace drawwell {

/// Dry air at one atmosphere.
struct AirFilm {
    double conductivity = 0;         // [W/(m K)]
    double viscosity = 0;            // [Pa s]
    double kinematic_viscosity = 0;  // [m2/s]
    double prandtl = 0;              // [-]
    double expansion = 0;            // [1/K]
};

/// Air at a temperature [K], 200 to 1500: Sutherland's viscosity and the conductivity of the US
/// Standard Atmosphere 1976 (from memory); within 3 % of tables. Prandtl number held at 0.70.
AirFilm air_properties(double temperature);
/// 5 % outside is our choice.
inline constexpr Range air_range{"air round the stove", "temperature", "K", 200, 1500, 0.05};

/// Rayleigh number [-] of a film, for a temperature difference [K] (its sign is kept) over a
/// length [m].
double film_rayleigh(const AirFilm& film, double difference, double length);

// Heat transfer coefficients [W/(m2 K)] from a surface at `surface` to air at `air` [K], natural
// convection and wind [m/s] combined by cubes. Properties at the mean temperature. The difference
// is rounded within 0.1 K of zero, so that the coefficients are smooth there (our choice).

/// Upright wall of a height [m], either way of the difference.
double vertical_outside(double surface, double air, double height, double wind);
/// Level disc of a diameter [m], looking up; colder than air it follows the law of a cold plate.
double horizontal_up_outside(double surface, double air, double diameter, double wind);
/// Upright pipe or barrel: natural convection on its height, the wind across its diameter.
struct UprightPipe {
    double height = 0;    // [m]
    double diameter = 0;  // [m]
};
double upright_pipe_outside(double surface, double air, const UprightPipe& pipe, double wind);
/// Level pipe of a diameter [m].
double cylinder_outside(double surface, double air, double diameter, double wind);

}  // namespace drawwell

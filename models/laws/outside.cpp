#include "models/laws/outside.h"

#include <cmath>

#include "models/laws/cube_root.h"
#include "models/laws/natural_convection.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double rounding = 0.1;  // [K]
constexpr double air_prandtl = 0.70;

/// Of an upright wall or pipe in air.
double upright_nusselt(double rayleigh) {
    static const double factor = vertical_prandtl_factor(air_prandtl);
    return natural_vertical_nusselt_by_factor(rayleigh, factor);
}

double rounded(double difference) {
    return std::hypot(difference, rounding);
}

/// h [W/(m2 K)] of two Nusselt numbers, each on its own length [m].
double by_cubes(double natural, double forced) {
    return cube_root(natural * natural * natural + forced * forced * forced);
}

}  // namespace

AirFilm air_properties(double temperature) {
    const double t15 = temperature * std::sqrt(temperature);
    AirFilm air;
    air.viscosity = 1.458e-6 * t15 / (temperature + 110.4);
    air.conductivity = 2.64638e-3 * t15 / (temperature + 245.4 * std::exp2(-39.863 / temperature));
    // 287.05 J/(kg K) is the gas constant of air with its argon.
    air.kinematic_viscosity = air.viscosity * 287.05 * temperature / constants::standard_pressure;
    air.prandtl = air_prandtl;
    air.expansion = 1 / temperature;
    return air;
}

double film_rayleigh(const AirFilm& film, double difference, double length) {
    const double nu = film.kinematic_viscosity;
    return constants::gravity * film.expansion * difference * length * length * length *
           film.prandtl / (nu * nu);
}

double vertical_outside(double surface, double air, double height, double wind) {
    const AirFilm film = air_properties(0.5 * (surface + air));
    const double ra = film_rayleigh(film, rounded(surface - air), height);
    const double re = std::abs(wind) * height / film.kinematic_viscosity;
    const double per_nusselt = film.conductivity / height;
    return per_nusselt * by_cubes(upright_nusselt(ra), wind_plate_nusselt(re, film.prandtl));
}

double horizontal_up_outside(double surface, double air, double diameter, double wind) {
    const AirFilm film = air_properties(0.5 * (surface + air));
    const double length = 0.25 * diameter;  // area over perimeter
    const double difference = surface - air;
    const double size = rounded(difference);
    const double ra = film_rayleigh(film, size, length);
    const double warm_share = 0.5 * (1 + difference / size);
    const double natural =
        natural_down_nusselt(ra) + warm_share * (natural_up_nusselt(ra) - natural_down_nusselt(ra));
    const double re = std::abs(wind) * diameter / film.kinematic_viscosity;
    return film.conductivity *
           by_cubes(natural / length, wind_plate_nusselt(re, film.prandtl) / diameter);
}

double upright_pipe_outside(double surface, double air, const UprightPipe& pipe, double wind) {
    const AirFilm film = air_properties(0.5 * (surface + air));
    const double ra = film_rayleigh(film, rounded(surface - air), pipe.height);
    const double re = std::abs(wind) * pipe.diameter / film.kinematic_viscosity;
    const double forced = re > 0 ? wind_cylinder_nusselt(re, film.prandtl) : 0;
    return film.conductivity * by_cubes(upright_nusselt(ra) / pipe.height, forced / pipe.diameter);
}

double cylinder_outside(double surface, double air, double diameter, double wind) {
    const AirFilm film = air_properties(0.5 * (surface + air));
    const double ra = film_rayleigh(film, rounded(surface - air), diameter);
    const double re = std::abs(wind) * diameter / film.kinematic_viscosity;
    const double forced = re > 0 ? wind_cylinder_nusselt(re, film.prandtl) : 0;
    return film.conductivity / diameter *
           by_cubes(natural_cylinder_nusselt(ra, film.prandtl), forced);
}

}  // namespace drawwell

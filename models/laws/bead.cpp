#include "models/laws/bead.h"

#include <cmath>

#include "models/laws/outside.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

/// [W/(m2 K)] from a bead to the walls, on their difference of temperature.
double radiant_film(const Bead& bead, double temperature, double wall) {
    if (bead.shielded) return 0;
    return bead.emissivity * constants::stefan_boltzmann * (temperature + wall) *
           (temperature * temperature + wall * wall);
}

double balanced(const BeadPlace& place, double radiant) {
    return (place.film * place.gas + radiant * place.wall) / (place.film + radiant);
}

}  // namespace

double bead_film(double diameter, double mass_flux, double gas) {
    const AirFilm air = air_properties(gas);
    const double re = std::abs(mass_flux) * diameter / air.viscosity;
    const double nu = 2 + 0.6 * std::sqrt(re) * std::cbrt(air.prandtl);
    return nu * air.conductivity / diameter;
}

double settled_bead(const Bead& bead, const BeadPlace& place) {
    if (bead.shielded) return place.gas;
    const double give = bead.emissivity * constants::stefan_boltzmann;
    double t = balanced(place, radiant_film(bead, place.gas, place.wall));
    for (int i = 0; i < 20; ++i) {  // Newton on a rising function: settles in a few
        const double off =
            place.film * (t - place.gas) + give * (std::pow(t, 4) - std::pow(place.wall, 4));
        const double step = off / (place.film + 4 * give * t * t * t);
        t -= step;
        if (std::abs(step) < 1e-9 * t) break;
    }
    return t;
}

double later_bead(const Bead& bead, const BeadPlace& place, double temperature, double time) {
    if (!(bead.diameter > 0)) return place.gas;
    const double settled = settled_bead(bead, place);
    // On the chord from here to where it settles, radiation is a film of its own.
    double radiant = 0;
    if (!bead.shielded) {
        const double t2 = temperature * temperature, s2 = settled * settled;
        radiant =
            bead.emissivity * constants::stefan_boltzmann * (temperature + settled) * (t2 + s2);
    }
    const double per_area = bead.capacity * bead.diameter / 6;  // [J/(m2 K)]
    return settled + (temperature - settled) * std::exp(-(place.film + radiant) * time / per_area);
}

}  // namespace drawwell

#include "models/laws/water.h"

#include <algorithm>
#include <cmath>

#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double vapour_constant = constants::molar_gas / 18.015e-3;  // [J/(kg K)]
constexpr double atmospheric = 373.15;                                // [K] boiling point
constexpr double boiling_film = 5e4;                                  // [W/(m2 K)]
constexpr double air_heat_capacity = 1007;                            // [J/(kg K)]
constexpr double lewis = 0.85;                                        // [-] of vapour in air
constexpr double molar_ratio = 0.622;                                 // [-] of water to air
constexpr double damp = 0.5;  // [-] relative humidity of a room: our choice

}  // namespace

double vapour_pressure(double temperature) {
    return constants::standard_pressure *
           std::exp(vaporisation_heat / vapour_constant * (1 / atmospheric - 1 / temperature));
}

double boiling_point(double pressure) {
    return 1 / (1 / atmospheric - vapour_constant / vaporisation_heat *
                                      std::log(pressure / constants::standard_pressure));
}

double dew_point(double vapour_pressure) {
    constexpr double least = 10;  // [Pa] for dry air's sake
    return 4077.9 / (23.6448 - std::log(std::max(vapour_pressure, least))) - 236.67 +
           constants::ice_point;
}

double boiling_flux(double temperature, double boils) {
    return boiling_film * std::max(0.0, temperature - boils);
}

double evaporation_flux(double temperature, double room, double film, double pressure) {
    const double excess = vapour_pressure(temperature) - damp * vapour_pressure(room);
    const double mass = film / (air_heat_capacity * std::pow(lewis, 2.0 / 3)) * molar_ratio *
                        std::max(0.0, excess) / pressure;  // [kg/(m2 s)]
    return mass * vaporisation_heat;
}

}  // namespace drawwell

#pragma once

namespace drawwell {

/// Heat capacity of water [J/(kg K)], and the heat of turning it to steam [J/kg] at one atmosphere
/// (from memory; both within 1 % from 20 to 100 degC and 2 % down to 60 degC).
inline constexpr double water_heat_capacity = 4186, vaporisation_heat = 2.257e6;

/// Vapour pressure [Pa] over water at a temperature [K], 320 to 375: the line of Clausius and
/// Clapeyron through 373.15 K at one atmosphere, within 9 % of tables there, a fifth too high at
/// 293 K (validation/handbook/saturation).
double vapour_pressure(double temperature);

/// Boiling point of water [K] at a pressure [Pa], 60 to 110 kPa: the same line, within 0.3 K of
/// tables.
double boiling_point(double pressure);

/// Dew point [K] of gas whose water vapour has a partial pressure [Pa], 1 to 100 kPa: an Antoine
/// fit as EN 13384-1 has it (from memory), within 0.2 K of steam tables.
double dew_point(double vapour_pressure);

/// What steam carries off [W/m2] from water at a temperature [K] over its boiling point: so much
/// that it stays within a kelvin of it. A means, no law.
double boiling_flux(double temperature, double boils);

/// What vapour carries off [W/m2] from open water below its boiling point, by a film [W/(m2 K)]:
/// heat and vapour leave alike (Lewis; Incropera, from memory). `room` [K] holds air half damp.
double evaporation_flux(double temperature, double room, double film, double pressure);

}  // namespace drawwell

#pragma once

namespace drawwell::constants {

inline constexpr double gravity = 9.80665;               // [m/s2] standard gravity, CGPM 1901
inline constexpr double stefan_boltzmann = 5.670374e-8;  // [W/(m2 K4)] CODATA 2018, rounded
inline constexpr double molar_gas = 8.314462618;         // [J/(mol K)] CODATA 2018
inline constexpr double standard_pressure = 101325.0;    // [Pa] one atmosphere
inline constexpr double ice_point = 273.15;              // [K] 0 degrees Celsius
inline constexpr double pi = 3.14159265358979323846;

}  // namespace drawwell::constants

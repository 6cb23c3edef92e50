#pragma once

namespace drawwell {

/// Emissivity [-] of a gas by Leckner (1972), as Modest's textbook has it: structure and overlap
/// read in open code, coefficients from memory. Temperature [K], partial pressures [bar] of water
/// vapour and carbon dioxide in a bar of gas, way [m].
struct LecknerGas {
    double temperature = 0, water = 0, dioxide = 0, way = 0;
};
double leckner_water(const LecknerGas& gas);
double leckner_dioxide(const LecknerGas& gas);
/// Both, less what they overlap.
double leckner_emissivity(const LecknerGas& gas);

}  // namespace drawwell

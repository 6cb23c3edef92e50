#pragma once

#include "models/laws/range.h"

namespace drawwell {

// Mean Nusselt numbers [-] on the length named. Rayleigh numbers below zero count as zero.

/// Vertical plate, on its height; Churchill and Chu, all Ra to 1e12.
double natural_vertical_nusselt(double rayleigh, double prandtl);
/// The same of a gas whose `vertical_prandtl_factor` is known, for many walls of one gas.
double natural_vertical_nusselt_by_factor(double rayleigh, double factor);
double vertical_prandtl_factor(double prandtl);
/// 20 % outside is our choice.
inline constexpr Range natural_vertical_range{
    "air at upright walls", "Rayleigh number", "", 0, 1e12, 0.2};
/// Level cylinder, on its diameter; Churchill and Chu, Ra to 1e12.
double natural_cylinder_nusselt(double rayleigh, double prandtl);
/// Hot plate facing up (or cold facing down), on area over perimeter: 0.54 Ra^(1/4) and
/// 0.15 Ra^(1/3), whichever is more; tends to 1 at Ra 0 (our choice, near conduction from a disc).
double natural_up_nusselt(double rayleigh);
/// McAdams, from memory; 20 % outside is our choice.
inline constexpr Range natural_up_range{
    "air over the plate", "Rayleigh number", "", 1e4, 1e11, 0.2};
/// Hot plate facing down (or cold facing up), on area over perimeter: McAdams 0.27 Ra^(1/4), tends
/// to 1 at Ra 0. Other sources differ by 16 to 30 %.
double natural_down_nusselt(double rayleigh);

/// Plate along a wind, on its length: laminar and turbulent from the edge, root of the sum of
/// squares (VDI heat atlas, from memory), for windy, turbulent air; 10 < Re < 1e7.
double wind_plate_nusselt(double reynolds, double prandtl);
/// Cylinder across a wind, on its diameter; Churchill and Bernstein.
double wind_cylinder_nusselt(double reynolds, double prandtl);

}  // namespace drawwell

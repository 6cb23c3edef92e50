#pragma once

#include "models/laws/natural_convection.h"
#include "models/laws/outside.h"
#include "models/laws/range.h"

namespace drawwell {

/// Mean Nusselt number [-] of a duct from its entry up to `length_over_diameter` (> 0) hydraulic
/// diameters. Laminar to Re 2300: combined entry after Baehr and Stephan (read in the open library
/// `ht`), 3.657 for long ducts. Turbulent from 4000: Gnielinski with 1 + (D/L)^(2/3) (from memory).
/// Between: Gnielinski's 2013 linear blend (from memory). Finite at rest; the sign of Re is
/// ignored.
double duct_nusselt_mean(double reynolds, double prandtl, double length_over_diameter);
/// Gnielinski's range, from memory; 10 % outside is our choice.
inline constexpr Range duct_film_range{"film in a duct", "Reynolds number", "", 0, 1e6, 0.1};
inline constexpr Range duct_film_prandtl_range{
    "film in a duct", "Prandtl number", "", 0.5, 2000, 0.1};

/// Nusselt number [-] of the jet under the plate, on the bore, within r = bore of its axis, from
/// the riser's Reynolds number on its bore and the gap over the bore (> 0): geometric mean of 0.76
/// Re^0.5 Pr^0.4 and 0.726 Re^0.53 (h/D)^-0.19, both from memory; +-35 %.
double stagnation_nusselt(double reynolds, double prandtl, double gap_over_bore);
/// Reynolds numbers: what the +-35 % is meant for. Gap: what the second formula was measured over
/// (from memory).
inline constexpr Range stagnation_range{
    "film under the plate", "Reynolds number", "", 2000, 4000, 0.35};
inline constexpr Range stagnation_gap_range{
    "film under the plate", "gap over bore", "", 0.1, 1, 0.35};
/// Local share [-] of it at a radius over the bore: 1 up to one bore, falling as 1/r beyond.
double stagnation_profile(double radius_over_bore);

/// Natural and forced convection together [-]: |Nn^3 +- Nf^3|^(1/3), plus when aiding. Where they
/// cancel, it is rounded to no less than 0.58 of either (our choice) so that the slope stays
/// finite.
double mixed_nusselt(double natural, double forced, bool aiding);

}  // namespace drawwell

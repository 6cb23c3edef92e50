#pragma once

#include "models/laws/range.h"

namespace drawwell {

// Loss coefficients K [-]: total pressure lost, in velocity heads of the section named.

/// Sharp flush entrance from a large space, on the duct. 0.50 by Idelchik, Crane and others; 0.57
/// by Rennels (read in the open library `fluids`).
double entrance_loss();

/// Exit into a large space, on the duct: the whole velocity head.
double exit_loss();

/// Single mitre bend turning the flow by `angle` [rad], 0..pi, on the duct.
/// Rennels 0.42 s + 2.56 s^3, s = sin(angle / 2) (read in `fluids`), for fast flow; slow flow
/// multiplies it by slow_bend_factor. InputError outside.
double mitre_bend_loss(double angle);

/// From a tee's run into its side branch or back, on the branch, all of one bore, for fast flow:
/// +-0.2. Between ASHRAE's 1.25 for a chimney's tee and Crane's 60 f_T = 1.08 for a bore of 100 mm,
/// both from memory. Slow flow multiplies it as a mitre bend's, our choice: or else a tee would
/// draw better than the right angle that it is.
double tee_side_loss();

/// What slow flow makes of a mitre bend's loss: (2e5 / Re)^0.2, Blevins (read in `fluids`), held
/// below Re 100; 1 above 2e5. It gives 2.5 for a right angle at Re 5000, where Hooper's two-K
/// method has 1.6 and Blevins' own table 2.3: stoves run where the sources differ most.
double slow_bend_factor(double reynolds);
/// Outside, +-20 %: half of what the sources differ by.
inline constexpr Range mitre_bend_range{"bends", "Reynolds number", "", 2e5, no_end, 0.2};

/// A sharp opening (port) between two ducts, on the port's own velocity.
/// `share_before`, `share_after` [-]: port area over the area of the duct before and after, 0..1.
/// (0.707 sqrt(1 - a) + 1 - b)^2, Idelchik, from memory. InputError outside 0..1.
double port_loss(double share_before, double share_after);

/// Abrupt widening, on the narrow duct; `area_ratio` [-] narrow over wide, 0..1. Borda-Carnot.
double sudden_expansion_loss(double area_ratio);

/// Abrupt narrowing, on the narrow duct; `area_ratio` [-] narrow over wide, 0..1.
/// Idelchik 0.5 (1 - f), from memory; Rennels gives up to a quarter more.
double sudden_contraction_loss(double area_ratio);

/// Turn from the riser through the gap under the plate into the barrel, on the riser's velocity;
/// `gap_over_bore` [-] > 0. 1 + 0.155 / (h/D)^2, Idelchik's plate valve, from memory: +-40 % below
/// 0.25, +-0.5 above. It contains the dumping into the barrel. InputError if not positive.
double turn_under_plate_loss(double gap_over_bore);
/// The upper end is our choice: the +-0.5 are a third of the whole there.
inline constexpr Range turn_under_plate_range{
    "turn under the plate", "gap over bore", "", 0.25, 0.6, 0.4};

/// One sharp hole between two large spaces, on the hole's velocity. Idelchik 1.707^2 = 2.91,
/// Rennels 2.81.
double hole_loss();

/// What slow flow adds to a local loss: this over the Reynolds number. 500 is our choice for turns
/// and ports together; Hooper's two-K values for bends are 800 to 1000.
inline constexpr double low_reynolds_loss = 500.0;
/// Losses of ports, holes and turns hold in fast flow, above Re 1e4 (Idelchik, from memory). Below,
/// the addition is as uncertain as it is large.
inline constexpr Range low_reynolds_range{
    "openings in slow flow", "Reynolds number", "", 1e4, no_end, 1.0};

}  // namespace drawwell

#pragma once

#include "models/stove.h"
#include "solver/march.h"

namespace drawwell {

struct BuiltStove;

/// Froude numbers [-] of a cold stream over hot gas at which the two begin to change places: they
/// may, they surely do. Our estimate, good to a factor of two.
inline constexpr double early_froude = 0.5, late_froude = 0.25;

/// Flow [kg/s] of a cold gas through `area` [m2] over a hot one, densities in kg/m3, at
/// Fr = u / sqrt(g D (cold - hot) / cold) = 1, D the diameter of a circle of that area; 0 where the
/// gas below is no lighter.
double flow_at_unit_froude(double cold, double hot, double area);

/// Flows [kg/s] into an open feed below which smoke trickles out beside the air that comes in: cold
/// air over a fire is unstable long before the net flow turns.
struct ExchangeOnset {
    double early = 0, late = 0;
};

/// The onset of exchange between room air and the gas at the feed's foot, through the area that
/// wood and cover leave. Zero without a feed. The march must hold the instant.
ExchangeOnset exchange_onset(const Stove& stove, const BuiltStove& built, const March& march);

}  // namespace drawwell

#pragma once

#include "models/stove.h"
#include "solver/march.h"

namespace drawwell {

struct BuiltStove;

/// Flows [kg/s] into an open feed below which smoke trickles out beside the air that comes in: cold
/// air over a fire is unstable long before the net flow turns.
struct ExchangeOnset {
    double early = 0;  // it may: Fr = 0.5
    double late = 0;   // it surely does: Fr = 0.25
};

/// The onset at a Froude number Fr = u / sqrt(g D (rho_air - rho_gas) / rho_air) at the mouth, u
/// the speed of the air past the wood, D the diameter of a circle of the area it leaves, rho_gas
/// the gas at the feed's foot. Fr 0.25 to 0.5: our estimate, good to a factor of two. Zero without
/// a feed, or with gas no lighter than the air. The march must hold the instant.
ExchangeOnset exchange_onset(const Stove& stove, const BuiltStove& built, const March& march);

}  // namespace drawwell

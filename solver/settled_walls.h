#pragma once

#include <span>

#include "solver/heat_balance.h"

namespace drawwell {

/// Lets the walls follow until they stand, with `inlet_flow` [kg/s] made to enter by the first
/// inlet and the fuel held as it is: a steady state of the walls alone, found by implicit steps
/// that grow until time no longer matters; where that leads nowhere, as they stand after two days.
/// Changes the walls' part of `state`, which is where it begins; leaves flow and gas there. Returns
/// the push [Pa] that this flow takes.
double settle_walls(HeatBalance& balance, double time, double inlet_flow, std::span<double> state);

/// The largest push [Pa] that lasts and the stove still withstands, its fuel held as it is and its
/// walls following: the top of the pushes that `settle_walls` gives between `most_flow` [kg/s] and
/// the spill point. Begins from the walls of `state`; looks first about the flow [kg/s] at which
/// the top is expected, if any.
ReserveDraw sustained_push(HeatBalance& balance, double time, std::span<const double> state,
                           double most_flow, double expected = 0);

}  // namespace drawwell

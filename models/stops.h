#pragma once

#include <vector>

#include "models/stove.h"

namespace drawwell {

/// Instants [s], increasing, from lighting on, at which a table bends, something is moved by hand
/// or a load goes in; those that are one (solver/instants.h) once.
std::vector<double> stops_of(const Stove& stove);

/// The stove with each of its times moved to the one of its stops that it is, so that all that is
/// to happen there happens at once. InputError: two times of one table are the same.
Stove at_common_stops(Stove stove);

}  // namespace drawwell

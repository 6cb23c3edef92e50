#pragma once

#include <vector>

#include "models/build_network.h"
#include "models/stove.h"

namespace drawwell {

/// Instants [s], increasing, at which a table bends, something is moved by hand or a load goes in.
std::vector<double> stops_of(const Stove& stove, const BuiltStove& built);

}  // namespace drawwell

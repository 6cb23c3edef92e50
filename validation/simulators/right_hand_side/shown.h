#pragma once

#include <span>
#include <string>
#include <vector>

#include "models/stove_run.h"

namespace drawwell {

/// What is told of a state, for each integrator alike: the temperature [K] of every solid, the
/// fuel's states, the flow [kg/s] by each inlet, and the heat [W] into all solids, each by its
/// size, by which one knows the right-hand side again.
std::vector<std::string> shown_names(const StoveRun& run);
/// The same at a state whose rates were just worked out.
std::vector<double> shown(const StoveRun& run, std::span<const double> state,
                          std::span<const double> rate);

}  // namespace drawwell

#pragma once

#include <functional>
#include <vector>

#include "models/build_network.h"
#include "models/library.h"
#include "models/loading.h"
#include "models/stove.h"
#include "solver/audit.h"
#include "solver/simulate.h"

namespace drawwell {

/// A stove built and made ready to burn: its network, the solver on it, and the hand that loads it.
/// It does not move: its parts refer to each other.
class StoveRun {
  public:
    /// Cold, or as an earlier run of the same stove ended. InputError: the stove cannot be built.
    StoveRun(const Stove& stove, const Library& library, const SavedState* from = nullptr);
    StoveRun(const StoveRun&) = delete;
    StoveRun& operator=(const StoveRun&) = delete;

    /// Burns until `end` [s], landing on all that changes on the way; `sample` and `stepped` as in
    /// Simulation. SolverError: no way on.
    Effort burn(double end, double sample_every, decltype(Simulation::sample) sample,
                decltype(Simulation::stepped) stepped = {});

    /// The stop that a time [s] is, if it is one (solver/instants.h), else the time itself.
    double instant(double time) const;

    const Stove stove;  // its times at common stops
    const std::vector<double> stops;
    const BuiltStove built;
    const Topology topology;
    HeatBalance balance;
    Audit audit;
    Loading loading;
};

}  // namespace drawwell

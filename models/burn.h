#pragma once

#include <atomic>
#include <functional>
#include <span>

#include "models/library.h"
#include "models/saved_state.h"
#include "models/stove.h"
#include "models/summary.h"
#include "solver/heat_balance.h"
#include "solver/results.h"

namespace drawwell {

/// What a caller may watch and stop while a burn is computed.
struct BurnWatch {
    std::function<void(double)> progress;     // called with the time reached [s]; may be empty
    const std::atomic<bool>* stop = nullptr;  // set from outside: stop after the present step
    /// Sees each sample's state with its flow, walls and gas worked out; may be empty.
    std::function<void(double time, std::span<const double> state, const HeatBalance& balance)>
        observe;
};

/// A burn as far as it was computed.
struct BurnOutcome {
    Results results;
    Summary summary;
    SavedState end_state;   // at the last instant
    bool complete = false;  // false: stopped by the watch
};

/// Computes the burn of a stove, cold or as an earlier run of it ended. Time counts from zero.
/// InputError: the stove cannot be built or run (with the reason). SolverError: we failed.
BurnOutcome run_burn(const Stove& stove, const Library& library, const BurnWatch& watch = {},
                     const SavedState* from = nullptr);

}  // namespace drawwell

#pragma once

#include <functional>
#include <span>
#include <vector>

#include "solver/audit.h"
#include "solver/heat_balance.h"

namespace drawwell {

/// What to integrate, and what to do on the way.
struct Simulation {
    double end = 0;             // [s]
    double tolerance = 1e-4;    // [-] of each step: of temperatures; twice it of the fuel's scales
    double sample_every = 30;   // [s]
    std::vector<double> stops;  // [s] within the burn at which something changes at once
    /// Changes the state at a stop; gives a later time at which to stop as well, or zero.
    std::function<double(double time, std::span<double> state)> at_stop;
    /// Sees the state at a sample, its flow worked out; and whether to go on.
    std::function<bool(double time, std::span<const double> state, HeatBalance& balance)> sample;
    /// Sees the flow committed at the start and at the end of each step; may be empty. Between two
    /// steps no flow turns for longer than a few seconds.
    std::function<void(double time, const Flow& flow)> stepped;
};

/// How it went.
struct Effort {
    std::size_t steps = 0, rejected = 0, evaluations = 0, marches = 0;
    bool complete = false;
};

/// Integrates from the network's initial state, landing on every stop. SolverError: no way on.
Effort simulate(const Simulation& simulation, HeatBalance& balance, Audit& audit);

}  // namespace drawwell

#include "models/cold_start.h"

#include <cmath>
#include <vector>

#include "models/stove_run.h"

namespace drawwell {
namespace {

constexpr double undecided = 0.01;  // [Pa] the lightest draught decides: our choice
constexpr double watched = 600;     // [s]
constexpr double look_every = 1;    // [s]

/// When the feed first takes in air to stay [s].
std::optional<double> turned_by(StoveRun& run) {
    std::optional<double> since;
    run.burn(watched, look_every, [&](double time, std::span<const double>, HeatBalance& at) {
        const bool inward = at.flow().inlet_flow() >= 0;
        if (!inward)
            since.reset();
        else if (!since)
            since = time;
        return true;
    });
    return since;
}

}  // namespace

ColdStart cold_start(const Stove& stove, const Library& library) {
    Stove kindled = stove;
    kindled.loads.clear();
    kindled.heat_source.reset();
    kindled.burn_rate.reset();
    ColdStart start;
    StoveRun run(kindled, library);
    const std::vector<double> state = run.built.network.initial_state();
    start.column = run.balance.flow().adverse_pressure(run.balance.conditions(0, state), 0);
    if (std::abs(start.column) >= undecided)
        start.leaning = start.column > 0 ? Leaning::rises : Leaning::falls;
    if (start.leaning == Leaning::falls) start.priming = -start.column;
    if (kindled.kindling) start.kindling = turned_by(run);
    return start;
}

}  // namespace drawwell

#include "models/cold_start.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "models/stove_run.h"

namespace drawwell {
namespace {

constexpr double undecided = 0.01;  // [Pa] the lightest draught decides: our choice
std::optional<double> turned_by(StoveRun& run) {
    KindlingWatch watch;
    const auto go_on = [](double, std::span<const double>, HeatBalance&) { return true; };
    run.burn(kindling_watched, kindling_watched, go_on,
             [&](double time, const Flow& flow) { watch.see(time, flow); });
    return watch.turned();
}

}  // namespace

void KindlingWatch::see(double time, const Flow& flow) {
    if (time > kindling_watched) return;
    if (flow.inlet_flow() < 0)
        since_.reset();
    else if (!since_)
        since_ = time;
}

bool kindles_alone(const Stove& stove) {
    return stove.kindling && !stove.heat_source && !stove.burn_rate &&
           stove.burn.duration >= kindling_watched &&
           std::all_of(stove.loads.begin(), stove.loads.end(), [](const Load& load) {
               return load.times.empty() || load.times.front() >= kindling_watched;
           });
}

ColdStart cold_start(const Stove& stove, const Library& library, const KindlingWatch* seen) {
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
    if (kindled.kindling) start.kindling = seen ? seen->turned() : turned_by(run);
    return start;
}

}  // namespace drawwell

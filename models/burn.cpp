#include "models/burn.h"

#include <algorithm>
#include <chrono>
#include <vector>

#include "models/cold_start.h"
#include "models/range_watch.h"
#include "models/recorder.h"
#include "models/stove_run.h"
#include "models/summarise.h"

namespace drawwell {

BurnOutcome run_burn(const Stove& stove, const Library& library, const BurnWatch& watch) {
    StoveRun run(stove, library);
    const BuiltStove& built = run.built;
    Recorder recorder(stove, built);
    RangeWatch ranges(stove, library, built);
    std::vector<double> last_state = built.network.initial_state();
    const std::vector<double> first_state = last_state;

    const auto sample = [&](double time, std::span<const double> state, HeatBalance& at) {
        ranges.sample(time, at);
        recorder.sample(time, state, at);
        std::copy(state.begin(), state.end(), last_state.begin());
        if (watch.progress) watch.progress(time);
        return watch.stop == nullptr || !watch.stop->load();
    };
    const auto start = std::chrono::steady_clock::now();
    const Effort effort = run.burn(stove.burn.duration, stove.burn.output_every, sample);
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - start;

    FuelStock stock;
    if (built.fire) {
        const auto fuel = [&](const std::vector<double>& state) {
            return std::span(state).subspan(built.network.solids.size());
        };
        stock.heating_value_lost = built.fire->heating_value(fuel(first_state)) +
                                   run.loading.put_value() -
                                   built.fire->heating_value(fuel(last_state));
        stock.dry_wood_lost = built.fire->dry_wood(fuel(first_state)) + run.loading.put_wood() -
                              built.fire->dry_wood(fuel(last_state));
    }
    BurnOutcome outcome;
    outcome.summary = summarise(stove, built, recorder, run.audit, stock);
    outcome.summary.cold_start = cold_start(stove, library);
    outcome.summary.steps = effort.steps;
    outcome.summary.rhs_evaluations = effort.evaluations;
    outcome.summary.wall_clock = spent.count();
    outcome.summary.remarks = run.loading.remarks();
    outcome.summary.stretched = ranges.stretched(outcome.summary.heat_released);
    outcome.results = recorder.take();
    outcome.complete = effort.complete;
    return outcome;
}

}  // namespace drawwell

#include "models/burn.h"

#include <algorithm>
#include <chrono>
#include <vector>

#include "models/carried_fire.h"
#include "models/cold_start.h"
#include "models/range_watch.h"
#include "models/recorder.h"
#include "models/stove_run.h"
#include "models/summarise.h"

namespace drawwell {

BurnOutcome run_burn(const Stove& the_stove, const Library& library, const BurnWatch& watch,
                     const SavedState* from) {
    StoveRun run(the_stove, library, from);
    const Stove& stove = run.stove;
    const BuiltStove& built = run.built;
    Recorder recorder(stove, built);
    RangeWatch ranges(stove, library, built);
    std::vector<double> last_state = built.network.initial_state();
    const std::vector<double> first_state = last_state;
    std::vector<double> last_flow(run.topology.loop_count);

    const auto sample = [&](double time, std::span<const double> state, HeatBalance& at) {
        if (watch.observe) watch.observe(time, state, at);  // before the recorder tries other flows
        ranges.sample(time, at);
        for (std::size_t k = 0; k < last_flow.size(); ++k) last_flow[k] = at.flow().inlet_flow(k);
        recorder.sample(time, state, at);
        std::copy(state.begin(), state.end(), last_state.begin());
        if (watch.progress) watch.progress(time);
        return watch.stop == nullptr || !watch.stop->load();
    };
    const auto start = std::chrono::steady_clock::now();
    KindlingWatch kindling;
    const Effort effort =
        run.burn(stove.burn.duration, stove.burn.output_every, sample,
                 [&](double time, const Flow& flow) { kindling.see(time, flow); });
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
    if (!from) {
        const bool seen = effort.complete && kindles_alone(stove);
        outcome.summary.cold_start = cold_start(stove, library, seen ? &kindling : nullptr);
    }
    outcome.summary.steps = effort.steps;
    outcome.summary.rhs_evaluations = effort.evaluations;
    outcome.summary.wall_clock = spent.count();
    if (from) outcome.summary.remarks = carried_fire_remarks(stove, *from);
    if (stove.plate && !built.layout.bow_told)
        outcome.summary.remarks.push_back(
            "how far heat bows the plate is not told: the expansion of " + stove.plate->material +
            " is not known");
    for (std::string& remark : run.loading.remarks())
        outcome.summary.remarks.push_back(std::move(remark));
    outcome.summary.stretched = ranges.stretched(outcome.summary.heat_released);
    outcome.results = recorder.take();
    outcome.end_state = saved_state(built, outcome.results.time.back(), last_state, last_flow);
    outcome.complete = effort.complete;
    return outcome;
}

}  // namespace drawwell

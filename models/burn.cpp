#include "models/burn.h"

#include <algorithm>
#include <chrono>
#include <set>

#include "models/build_network.h"
#include "models/loading.h"
#include "models/recorder.h"
#include "models/summarise.h"
#include "solver/simulate.h"

namespace drawwell {
namespace {

/// Instants at which a table bends or a load goes in.
std::vector<double> stops_of(const Stove& stove, const BuiltStove& built) {
    std::set<double> stops;
    for (const auto& load : built.load_times) stops.insert(load.time);
    for (const auto& table : {stove.heat_source, stove.burn_rate})
        if (table) stops.insert(table->x().begin(), table->x().end());
    return {stops.begin(), stops.end()};
}

}  // namespace

BurnOutcome run_burn(const Stove& stove, const Library& library, const BurnWatch& watch) {
    const BuiltStove built = build_network(stove, library);
    const Topology topology = find_topology(built.network);
    HeatBalance balance(built.network, topology);
    Audit audit(built.network);
    Recorder recorder(stove, built);
    Loading loading(built);
    std::vector<double> last_state = built.network.initial_state();
    const std::vector<double> first_state = last_state;

    Simulation simulation;
    simulation.end = stove.burn.duration;
    simulation.tolerance = stove.burn.tolerance;
    simulation.sample_every = stove.burn.output_every;
    simulation.stops = stops_of(stove, built);
    if (built.bed)
        simulation.at_stop = [&](double time, std::span<double> state) {
            return loading.at_stop(time, state.subspan(built.network.solids.size()));
        };
    simulation.sample = [&](double time, std::span<const double> state, HeatBalance& at) {
        recorder.sample(time, state, at);
        std::copy(state.begin(), state.end(), last_state.begin());
        if (watch.progress) watch.progress(time);
        return watch.stop == nullptr || !watch.stop->load();
    };

    const auto start = std::chrono::steady_clock::now();
    const Effort effort = simulate(simulation, balance, audit);
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - start;

    FuelStock stock;
    if (built.fire) {
        const auto fuel = [&](const std::vector<double>& state) {
            return std::span(state).subspan(built.network.solids.size());
        };
        stock.heating_value_lost = built.fire->heating_value(fuel(first_state)) +
                                   loading.put_value() -
                                   built.fire->heating_value(fuel(last_state));
        stock.dry_wood_lost = built.fire->dry_wood(fuel(first_state)) + loading.put_wood() -
                              built.fire->dry_wood(fuel(last_state));
    }
    BurnOutcome outcome;
    outcome.summary = summarise(stove, built, recorder, audit, stock);
    outcome.summary.steps = effort.steps;
    outcome.summary.rhs_evaluations = effort.evaluations;
    outcome.summary.wall_clock = spent.count();
    outcome.summary.remarks = loading.remarks();
    outcome.results = recorder.take();
    outcome.complete = effort.complete;
    return outcome;
}

}  // namespace drawwell

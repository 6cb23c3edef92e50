#include "models/stove_run.h"

#include <set>
#include <utility>
#include <vector>

namespace drawwell {
namespace {

/// Instants at which a table bends, something is moved by hand or a load goes in.
std::vector<double> stops_of(const Stove& stove, const BuiltStove& built) {
    std::set<double> stops;
    for (const auto& load : built.load_times) stops.insert(load.time);
    for (const auto& table : {stove.heat_source, stove.burn_rate})
        if (table) stops.insert(table->x().begin(), table->x().end());
    const Site& site = stove.site;
    for (const Table* table : {&site.outdoor, &site.wind, &site.gust, &site.room_suction})
        stops.insert(table->x().begin(), table->x().end());
    const Schedule& schedule = stove.schedule;
    for (const Steps* steps : {&schedule.damper, &schedule.bypass, &schedule.port,
                               &schedule.side_air, &schedule.feed_cover, &schedule.plate_cover})
        stops.insert(steps->time().begin(), steps->time().end());
    return {stops.begin(), stops.end()};
}

}  // namespace

StoveRun::StoveRun(const Stove& the_stove, const Library& library)
    : stove(the_stove),
      built(build_network(the_stove, library)),
      topology(find_topology(built.network)),
      balance(built.network, topology),
      audit(built.network),
      loading(built) {}

Effort StoveRun::burn(double end, double sample_every, decltype(Simulation::sample) sample) {
    Simulation simulation;
    simulation.end = end;
    simulation.tolerance = stove.burn.tolerance;
    simulation.sample_every = sample_every;
    simulation.stops = stops_of(stove, built);
    simulation.at_stop = [&](double time, std::span<double> state) {
        return loading.at_stop(time, state);
    };
    simulation.sample = std::move(sample);
    return simulate(simulation, balance, audit);
}

}  // namespace drawwell

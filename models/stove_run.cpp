#include "models/stove_run.h"

#include <utility>

#include "models/stops.h"
#include "solver/instants.h"

namespace drawwell {

StoveRun::StoveRun(const Stove& the_stove, const Library& library, const SavedState* from)
    : stove(at_common_stops(the_stove)),
      stops(stops_of(stove)),
      built(build_network(stove, library, from)),
      topology(find_topology(built.network)),
      balance(built.network, topology),
      audit(built.network),
      loading(built) {
    if (from) balance.flow().begin_from(inlet_flows(built.network, *from));
}

double StoveRun::instant(double time) const {
    return instant_among(stops, time);
}

Effort StoveRun::burn(double end, double sample_every, decltype(Simulation::sample) sample,
                      decltype(Simulation::stepped) stepped) {
    Simulation simulation;
    simulation.end = instant(end);
    simulation.tolerance = stove.burn.tolerance;
    simulation.sample_every = sample_every;
    simulation.stops = stops;
    if (built.bed)
        simulation.at_stop = [&](double time, std::span<double> state) {
            return loading.at_stop(time, state.subspan(built.network.solids.size()));
        };
    simulation.sample = std::move(sample);
    simulation.stepped = std::move(stepped);
    return simulate(simulation, balance, audit);
}

}  // namespace drawwell

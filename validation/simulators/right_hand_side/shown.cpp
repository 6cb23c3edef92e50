#include "validation/simulators/right_hand_side/shown.h"

#include <cmath>

namespace drawwell {

std::vector<std::string> shown_names(const StoveRun& run) {
    const Network& network = run.built.network;
    std::vector<std::string> names;
    for (const Solid& solid : network.solids) names.push_back(solid.name);
    for (std::size_t i = 0; i < network.initial_fuel.size(); ++i)
        names.push_back("fuel." + std::to_string(i));
    for (const std::size_t p : run.topology.inlets)
        names.push_back("flow." + network.passages[p].name);
    names.emplace_back("heat");
    return names;
}

std::vector<double> shown(const StoveRun& run, std::span<const double> state,
                          std::span<const double> rate) {
    const Network& network = run.built.network;
    const std::size_t solids = network.solids.size();
    std::vector<double> all(solids);
    network.temperatures(state, all);
    all.insert(all.end(), state.begin() + static_cast<std::ptrdiff_t>(solids), state.end());
    for (std::size_t k = 0; k < run.topology.loop_count; ++k)
        all.push_back(run.balance.flow().inlet_flow(k));
    double heat = 0;
    for (std::size_t i = 0; i < solids; ++i) heat += std::abs(rate[i]);
    all.push_back(heat);
    return all;
}

}  // namespace drawwell

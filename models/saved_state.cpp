#include "models/saved_state.h"

#include <algorithm>
#include <map>
#include <string_view>

#include "models/build_network.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double worth_saving = 1e-6;   // [kg] of wood or char: our choice
constexpr double lighting_char = 5e-3;  // [kg] of embers that light what is put in: our choice
constexpr double lighting_wood =
    1e-3;                              // [kg] a splinter, which is out before it lights: our choice
constexpr double burning_rate = 2e-5;  // [kg/s] of wood in flames, some 0.3 kW: our choice
constexpr std::size_t named_parts = 4;  // in the message on another stove

std::string some_of(const std::vector<std::string>& names) {
    std::string text = std::to_string(names.size()) + " (";
    for (std::size_t i = 0; i < std::min(names.size(), named_parts); ++i)
        text += (i > 0 ? ", " : "") + names[i];
    return text + (names.size() > named_parts ? ", ...)" : ")");
}

void save_bed(const BuiltStove& built, std::span<const double> fuel, SavedState& saved) {
    constexpr std::size_t n = FuelBed::states_per_lot;
    for (std::size_t i = 0; i < built.bed->lots().size(); ++i) {
        LeftLot left{.lot = built.bed->lots()[i], .place = {}};
        for (std::size_t s = 0; s < n; ++s) left.state[s] = std::max(fuel[n * i + s], 0.0);
        if (left.state[1] < worth_saving && left.state[2] < worth_saving) continue;
        const JunctionId junction = built.network.fire_sites[left.lot.site];
        left.place = built.network.junctions[index(junction)].name;
        left.lot.lit_by_hand = false;
        saved.left.push_back(std::move(left));
    }
}

}  // namespace

double SavedState::wood_left() const {
    double sum = 0;
    for (const LeftLot& lot : left) sum += lot.state[1];
    return sum;
}

double SavedState::embers_left() const {
    double sum = 0;
    for (const LeftLot& lot : left) sum += lot.state[2];
    return sum;
}

bool SavedState::still_burns() const {
    double rate = 0;
    for (const LeftLot& lot : left) rate += lot.state[1] > lighting_wood ? lot.state[0] : 0;
    return embers_left() > lighting_char || rate > burning_rate;
}

SavedState saved_state(const BuiltStove& built, double time, std::span<const double> state,
                       std::span<const double> inlet_flow) {
    const Network& network = built.network;
    SavedState saved;
    saved.time = time;
    std::vector<double> temperature(network.solids.size());
    network.temperatures(state, temperature);
    for (std::size_t i = 0; i < temperature.size(); ++i)
        saved.temperature.emplace_back(network.solids[i].name, temperature[i]);
    std::size_t inlet = 0;
    for (const Passage& passage : network.passages)
        if (passage.inlet) saved.inlet_flow.emplace_back(passage.name, inlet_flow[inlet++]);
    const auto fuel = state.subspan(network.solids.size());
    if (built.bed) {
        save_bed(built, fuel, saved);
    } else if (built.fire && built.fire->char_left(fuel) > worth_saving) {
        const double embers = built.fire->char_left(fuel);
        LeftLot left{.lot = {.name = "embers", .dry_mass = embers}, .place = {}};
        left.place = network.junctions[index(network.fire_sites.front())].name;
        left.state[2] = embers;
        saved.left.push_back(std::move(left));
    }
    return saved;
}

void warm_walls(std::vector<Solid>& solids, const SavedState& from) {
    std::map<std::string_view, double> known(from.temperature.begin(), from.temperature.end());
    std::vector<std::string> missing;
    for (Solid& solid : solids) {
        const auto found = known.find(solid.name);
        if (found == known.end()) {
            missing.push_back(solid.name);
            continue;
        }
        if (!solid.held) solid.initial_temperature = found->second;
        known.erase(found);
    }
    std::vector<std::string> left_over;
    for (const auto& [name, temperature] : from.temperature)
        if (known.contains(name)) left_over.push_back(name);
    if (missing.empty() && left_over.empty()) return;
    std::string why = "the run to start from is of another stove, or of another burn.refine:";
    if (!missing.empty())
        why += " it lacks " + some_of(missing) + " of this stove's pieces of wall";
    if (!left_over.empty())
        why += std::string(missing.empty() ? "" : ";") + " it has " + some_of(left_over) +
               " that this stove lacks";
    throw InputError(why);
}

std::vector<double> inlet_flows(const Network& network, const SavedState& from) {
    std::vector<double> flows;
    for (const Passage& passage : network.passages) {
        if (!passage.inlet) continue;
        const auto found =
            std::find_if(from.inlet_flow.begin(), from.inlet_flow.end(),
                         [&](const auto& inlet) { return inlet.first == passage.name; });
        flows.push_back(found == from.inlet_flow.end() ? 0.0 : found->second);
    }
    return flows;
}

}  // namespace drawwell

#include "solver/network.h"

#include <algorithm>
#include <cstddef>

#include "solver/errors.h"

namespace drawwell {
namespace {

void check(bool good, const std::string& part, const char* why) {
    if (!good) throw InputError(part + ": " + why);
}

}  // namespace

std::vector<double> Network::initial_state() const {
    std::vector<double> state;
    state.reserve(state_count());
    for (const Solid& solid : solids)
        state.push_back(solid.mass * solid.curve->enthalpy(solid.initial_temperature));
    state.insert(state.end(), initial_fuel.begin(), initial_fuel.end());
    return state;
}

void Network::temperatures(std::span<const double> state, std::span<double> temperature) const {
    // A trial step may overshoot beyond sense; laws must survive it until it is rejected.
    constexpr double coldest = 50, hottest = 4000;  // [K]
    for (std::size_t i = 0; i < solids.size(); ++i)
        temperature[i] = solids[i].held ? solids[i].initial_temperature
                                        : std::clamp(solids[i].curve->temperature(
                                                         state[i] / solids[i].mass, temperature[i]),
                                                     coldest, hottest);
}

Network finish(Network network) {
    const auto known = [&](SolidId id) { return index(id) < network.solids.size(); };
    for (const Solid& solid : network.solids) {
        check(solid.curve && solid.conductivity, solid.name, "has no material");
        check(solid.mass > 0, solid.name, "needs a positive mass");
        check(solid.initial_temperature > 0, solid.name, "needs a positive temperature");
    }
    for (const ConductionLink& link : network.links)
        check(known(link.a) && known(link.b) && link.a != link.b, "conduction",
              "joins solids that do not exist");
    for (const OutsideFace& face : network.outside) {
        check(face.flux != nullptr && face.area.size() == face.solids.size(), face.name,
              "needs a law, and an area for each solid");
        for (const SolidId id : face.solids) check(known(id), face.name, "faces no solid");
    }
    for (const RadiationEnclosure& enclosure : network.enclosures)
        check(enclosure.exchange_area.size() == enclosure.patches.size() * enclosure.patches.size(),
              enclosure.name, "needs an exchange area for each pair of patches");
    check(network.fire_sites.size() == (network.fire ? network.fire->site_count() : 0), "fire",
          "needs a junction for each of its sites");

    std::vector<int> ends(network.junctions.size());
    for (Passage& passage : network.passages) {
        check(passage.law != nullptr, passage.name, "has no law");
        check(index(passage.from) < ends.size() && index(passage.to) < ends.size() &&
                  passage.from != passage.to,
              passage.name, "does not join two junctions");
        ++ends[index(passage.from)];
        ++ends[index(passage.to)];
        passage.first_cell = network.gas_cell_count;
        passage.first_touch = network.touch_count;
        network.gas_cell_count += passage.law->cell_count();
        network.touch_count += passage.law->touches().size();
        for (const Touch& touch : passage.law->touches())
            check(touch.solid < network.solids.size() && touch.gas_cell < passage.law->cell_count(),
                  passage.name, "touches a wall that does not exist");
    }
    for (std::size_t i = 0; i < ends.size(); ++i)
        check(ends[i] >= (network.junctions[i].boundary ? 1 : 2), network.junctions[i].name,
              "is a dead end of the gas path");
    return network;
}

}  // namespace drawwell

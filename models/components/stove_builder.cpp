#include "models/components/stove_builder.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {

StoveBuilder::StoveBuilder(const Stove& the_stove, const Library& the_library,
                           const SolidFuel& fuel)
    : stove(the_stove), library(the_library) {
    auto model = std::make_shared<const GasModel>(volatile_gas(fuel));
    const Mixture air = model->mixture(dry_air());
    gas.model = model;
    gas.pressure = stove.site.pressure;
    gas.outdoor_density = air.density(stove.site.outdoor(0), gas.pressure);
    gas.flame.freezing_temperature = library.bed.freezing_temperature.value;
    gas.flame_absorption = library.bed.flame_absorption.value;
    gas.flame_temperature = library.bed.flame_temperature.value;
    gas.radiant_fraction = library.bed.radiant_fraction.value;
    room_density = air.density(stove.site.room, gas.pressure);
    network.gas_temperature = [model](const GasState& state) {
        return model->mixture(state.mass_fraction).temperature(state.enthalpy, state.temperature);
    };
}

std::size_t StoveBuilder::cells(double usual) const {
    return static_cast<std::size_t>(std::max(1.0, std::round(usual * stove.burn.refine)));
}

const Material& StoveBuilder::material(const std::string& name) const {
    const auto found = library.materials.find(name);
    if (found == library.materials.end()) throw InputError("no material is called " + name);
    return found->second;
}

SolidId StoveBuilder::add_solid(const std::string& name, const std::string& material_name,
                                double volume, double temperature) {
    const Material& of = material(material_name);
    auto [it, fresh] = made_.try_emplace(material_name);
    if (fresh)
        it->second = {std::make_shared<EnthalpyCurve>(of.heat_capacity),
                      std::make_shared<Table>(of.conductivity)};
    network.solids.push_back({.name = name,
                              .curve = it->second.curve,
                              .conductivity = it->second.conductivity,
                              .mass = volume * of.density,
                              .initial_temperature = temperature});
    return SolidId{network.solids.size() - 1};
}

JunctionId StoveBuilder::add_junction(const std::string& name) {
    network.junctions.push_back({.name = name});
    return JunctionId{network.junctions.size() - 1};
}

JunctionId StoveBuilder::add_room_air(const std::string& name, double height) {
    const Site& site = stove.site;
    // The room is a column of its own: it gains on the outdoor one with height where it is warm.
    const double pressure = -site.room_suction(0) + constants::gravity *
                                                        (gas.outdoor_density - room_density) *
                                                        (height - site.room_suction_height);
    GasState air{.enthalpy = gas.model->mixture(dry_air()).enthalpy(site.room),
                 .mass_fraction = dry_air()};
    network.junctions.push_back({.name = name, .boundary = true, .pressure = pressure, .gas = air});
    const JunctionId id{network.junctions.size() - 1};
    layout.room_air.push_back(id);
    return id;
}

JunctionId StoveBuilder::add_outdoors(const std::string& name, double pressure) {
    GasState air{.enthalpy = gas.model->mixture(dry_air()).enthalpy(stove.site.outdoor(0)),
                 .mass_fraction = dry_air()};
    network.junctions.push_back({.name = name, .boundary = true, .pressure = pressure, .gas = air});
    return JunctionId{network.junctions.size() - 1};
}

std::size_t StoveBuilder::add_passage(const std::string& name, JunctionId from, JunctionId to,
                                      GasPassageShape shape, bool inlet) {
    network.passages.push_back({.name = name,
                                .from = from,
                                .to = to,
                                .inlet = inlet,
                                .law = std::make_unique<GasPassage>(std::move(shape), gas)});
    return network.passages.size() - 1;
}

std::size_t StoveBuilder::add_setting(double value) {
    network.settings.push_back(value);
    return network.settings.size() - 1;
}

}  // namespace drawwell

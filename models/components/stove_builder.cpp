#include "models/components/stove_builder.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double least_open = 0.02;  // [-] that the best of dampers and covers leaks: our choice

bool is_constant(const Table& table) {
    return table.x().size() == 1;
}

}  // namespace

std::vector<double> SolidRow::ends(double from) const {
    std::vector<double> ends{from};
    for (const double middle : position) ends.push_back(2 * middle - ends.back());
    return ends;
}

bool is_moved(const Steps& steps, double rest) {
    return std::any_of(steps.value().begin(), steps.value().end(),
                       [&](double value) { return value != rest; });
}

StoveBuilder::StoveBuilder(const Stove& the_stove, const Library& the_library,
                           const SolidFuel& fuel)
    : stove(the_stove), library(the_library) {
    auto model = std::make_shared<const GasModel>(volatile_gas(fuel));
    const Mixture air = model->mixture(dry_air());
    gas.model = model;
    gas.pressure = stove.site.pressure;
    outdoor_air = [model, outdoor = stove.site.outdoor, pressure = gas.pressure](double time) {
        return model->mixture(dry_air()).density(outdoor(time), pressure);
    };
    gas.outdoor_density = outdoor_air(0);
    if (!is_constant(stove.site.outdoor)) {
        const std::size_t setting = add_setting(gas.outdoor_density);
        gas.outdoor_density_setting = setting;
        add_change([setting, outdoor_air = outdoor_air](double time, Surroundings& around) {
            around.settings[setting] = outdoor_air(time);
        });
    }
    gas.flame.freezing_temperature = library.bed.freezing_temperature.value;
    gas.flame_absorption = library.bed.flame_absorption.value;
    gas.flame_temperature = library.bed.flame_temperature.value;
    gas.radiant_fraction = library.bed.radiant_fraction.value;
    room_density = air.density(stove.site.room, gas.pressure);
    // The room is a column of its own: it gains on the outdoor one with height where it is warm.
    room_pressure = [site = stove.site, outdoor_air = outdoor_air, warm = room_density](
                        double time, double height) {
        return -site.room_suction(time) + constants::gravity * (height - site.room_suction_height) *
                                              (outdoor_air(time) - warm);
    };
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
    layout.material.push_back(material_name);
    return SolidId{network.solids.size() - 1};
}

JunctionId StoveBuilder::add_junction(const std::string& name) {
    network.junctions.push_back({.name = name});
    return JunctionId{network.junctions.size() - 1};
}

JunctionId StoveBuilder::add_end(const std::string& name, const Table& temperature,
                                 std::function<double(double)> pressure, bool steady) {
    const auto air = [model = gas.model, temperature](double time) {
        return GasState{.enthalpy = model->mixture(dry_air()).enthalpy(temperature(time)),
                        .mass_fraction = dry_air()};
    };
    network.junctions.push_back(
        {.name = name, .boundary = true, .pressure = pressure(0), .gas = air(0)});
    const std::size_t end = network.junctions.size() - 1;
    if (!steady)
        add_change([end, air, pressure = std::move(pressure)](double time, Surroundings& around) {
            around.pressure[end] = pressure(time);
            around.gas[end] = air(time);
        });
    return JunctionId{end};
}

JunctionId StoveBuilder::add_room_air(const std::string& name, double height) {
    const Site& site = stove.site;
    const JunctionId id = add_end(
        name, Table(site.room),
        [pressure = room_pressure, height](double time) { return pressure(time, height); },
        is_constant(site.outdoor) && is_constant(site.room_suction));
    layout.room_air.push_back(id);
    return id;
}

JunctionId StoveBuilder::add_outdoors(const std::string& name,
                                      std::function<double(double)> pressure) {
    const Site& site = stove.site;
    return add_end(name, site.outdoor, std::move(pressure),
                   is_constant(site.outdoor) && is_constant(site.wind));
}

JunctionId StoveBuilder::add_air_for_fire(const std::string& inlet, bool outdoors) {
    return outdoors ? add_outdoors("outdoors at " + inlet, [](double) { return 0.0; })
                    : add_room_air("room at " + inlet, stove.axis_height());
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

void StoveBuilder::amend(std::size_t passage,
                         const std::function<void(GasPassageShape& shape)>& change) {
    std::unique_ptr<PassageLaw>& law = network.passages[passage].law;
    GasPassageShape shape = static_cast<const GasPassage&>(*law).shape();
    change(shape);
    law = std::make_unique<GasPassage>(std::move(shape), gas);
}

std::size_t StoveBuilder::add_setting(double value) {
    network.settings.push_back(value);
    return network.settings.size() - 1;
}

std::size_t StoveBuilder::add_open_share(const Steps& open) {
    const auto share = [open](double time) { return std::max(open(time), least_open); };
    const std::size_t setting = add_setting(share(0));
    if (open.time().size() > 1)
        add_change([setting, share](double time, Surroundings& around) {
            around.settings[setting] = share(time);
        });
    return setting;
}

void StoveBuilder::add_change(Change change) {
    changes_->push_back(std::move(change));
    network.change = [all = changes_](double time, Surroundings& around) {
        for (const Change& each : *all) each(time, around);
    };
}

}  // namespace drawwell

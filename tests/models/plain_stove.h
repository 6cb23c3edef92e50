#pragma once

#include "models/components/stove_builder.h"
#include "models/library.h"
#include "models/stove.h"
#include "solver/constants.h"

namespace drawwell::tests {

// A small stove and round figures for its materials, invented for the tests: whatever is checked
// is worked out from these same figures.

inline Material plain_material(double density, double conductivity, double heat_capacity,
                               double emissivity) {
    Material material;
    material.density = density;
    material.conductivity = Table(conductivity);
    material.heat_capacity = Table(heat_capacity);
    material.emissivity = emissivity;
    return material;
}

/// Bed constants with round values near those of data/fuel_bed.toml.
inline BedConstants plain_bed() {
    return {.surface_rate = {0.006, 0},
            .flame_feedback = {33e3, 0},
            .flux_scale = {53e3, 0},
            .largest_rate = {0.015, 0},
            .ignition_flux = {12e3, 0},
            .response_time = {45, 0},
            .wood_absorptivity = {0.9, 0},
            .water_to_wood_heat = {0.75, 0},
            .hand_lit_for = {90, 0},
            .lighting_embers = {0.02, 0},
            .char_yield = {0.2, 0},
            .char_kinetic_rate = {0.3, 0},
            .char_transfer_rate = {0.06, 0},
            .char_area = {0.5, 0},
            .char_wait = {60, 0},
            .char_to_co = {0.1, 0},
            .flame_length_factor = {1, 0},
            .flame_temperature = {1373.15, 0},
            .flame_absorption = {0.8, 0},
            .radiant_fraction = {0.25, 0},
            .ember_temperature = {900, 0},
            .ember_view = {0.3, 0},
            .full_ember_bed = {0.05, 0},
            .ash_density = {500, 0},
            .freezing_temperature = {873.15, 0}};
}

inline Library plain_library() {
    Library library;
    library.materials["sheet"] = plain_material(7850, 50, 500, 0.8);
    library.materials["board"] = plain_material(500, 0.1, 1000, 0.9);
    library.materials["brick"] = plain_material(2000, 1, 900, 0.85);
    Wood wood;
    wood.name = "wood";
    wood.higher_heating_value = 19.8e6;
    wood.density = 690;
    library.woods["wood"] = wood;
    library.bed = plain_bed();
    return library;
}

inline SolidFuel plain_fuel() {
    const Library library = plain_library();
    return {.wood = library.woods.at("wood"), .char_yield = library.bed.char_yield.value};
}

inline Stove plain_stove() {
    Stove stove;
    stove.title = "plain";
    stove.feed = Feed{.mouth = 0.24,
                      .width = 0.125,
                      .depth = 0.11,
                      .lining = {{"brick", 0.064}},
                      .foot_lining = {{"brick", 0.064}}};
    stove.tunnel = Tunnel{.width = 0.125,
                          .height = 0.11,
                          .length = 0.34,
                          .lining = {{"brick", 0.064}},
                          .roof = {{"brick", 0.03}}};
    stove.port = Port{.width = 0.09, .height = 0.11};
    stove.riser.bore = 0.125;
    stove.riser.top = 0.725;
    stove.riser.lining = {{"board", 0.025}, {"sheet", 0.001}};
    stove.barrel = Barrel{.diameter = 0.4, .height = 0.62, .shell = {{"sheet", 0.0012}}};
    stove.plate =
        Plate{.diameter = 0.42, .thickness = 0.006, .underside = 0.77, .material = "sheet"};
    FlueSection level;
    level.name = "level";
    level.length = 0.3;
    level.bore = 0.125;
    level.wall = {{"sheet", 0.0005}};
    FlueSection stack = level;
    stack.name = "stack";
    stack.length = stack.rise = 2.2;
    stack.entry_angle = constants::pi / 2;
    stove.flue.outlet = 0.075;
    stove.flue.sections = {level, stack};
    stove.wood_kind = "wood";
    return stove;
}

/// A builder with the stove and library it refers to.
struct Workshop {
    explicit Workshop(Stove the_stove = plain_stove())
        : stove(std::move(the_stove)), builder(stove, library, plain_fuel()) {}
    Workshop(const Workshop&) = delete;
    Workshop& operator=(const Workshop&) = delete;

    Library library = plain_library();
    Stove stove;
    StoveBuilder builder;

    /// Mass [kg] of every solid whose name begins so.
    double mass(std::string_view prefix) const {
        double sum = 0;
        for (const Solid& solid : builder.network.solids)
            if (solid.name.starts_with(prefix)) sum += solid.mass;
        return sum;
    }
    const OutsideFace* face(std::string_view name) const {
        for (const OutsideFace& outside : builder.network.outside)
            if (outside.name == name) return &outside;
        return nullptr;
    }
};

inline double sum_of(std::span<const double> values) {
    double sum = 0;
    for (const double value : values) sum += value;
    return sum;
}

/// A crossing of a passage with every wall at one temperature [K].
struct Crossed {
    Crossed(const PassageLaw& law, double mass_flow, double gas_temperature, double walls,
            const GasModel& model, std::size_t solids, std::span<const double> settings = {})
        : Crossed(law, mass_flow,
                  GasState{.enthalpy = model.mixture(dry_air()).enthalpy(gas_temperature),
                           .mass_fraction = dry_air()},
                  std::vector<double>(solids, walls), settings) {}

    Crossed(const PassageLaw& law, double mass_flow, const GasState& gas,
            const std::vector<double>& walls, std::span<const double> settings = {})
        : cells(law.cell_count()), conductance(law.touches().size()), given(law.touches().size()) {
        const PassageInput input{
            .mass_flow = mass_flow, .gas = gas, .solid_temperature = walls, .settings = settings};
        crossing = law.cross(input, {cells, conductance, given});
        for (std::size_t k = 0; k < conductance.size(); ++k) {
            const Touch& touch = law.touches()[k];
            heat.push_back(conductance[k] *
                               (cells[touch.gas_cell].mean_temperature - walls[touch.solid]) +
                           given[k]);
        }
    }

    std::vector<GasCell> cells;
    std::vector<double> conductance, given;
    std::vector<double> heat;  // [W] to each touch
    Crossing crossing;
};

/// Height [m] that gas gains on its way through a passage, told by its buoyancy.
inline double rise_of(const StoveBuilder& builder, std::size_t passage) {
    constexpr double hot = 600;
    const Crossed crossed(*builder.network.passages[passage].law, 0.005, hot, hot,
                          *builder.gas.model, builder.network.solids.size(),
                          builder.network.settings);
    const double density = builder.gas.model->mixture(dry_air()).density(hot, builder.gas.pressure);
    return crossed.crossing.buoyancy /
           (constants::gravity * (builder.gas.outdoor_density - density));
}

}  // namespace drawwell::tests

#include "validation/gas_bench.h"

#include <memory>
#include <utility>

#include "cli/read/read_library.h"
#include "models/components/duct_shape.h"
#include "models/fire/solid_fuel.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

JunctionId add_boundary(Network& network, const std::string& name, const GasState& gas) {
    Junction junction;
    junction.name = name;
    junction.boundary = true;
    junction.gas = gas;
    network.junctions.push_back(std::move(junction));
    return JunctionId{network.junctions.size() - 1};
}

}  // namespace

GasBench::GasBench(double air_temperature) {
    const Library library = read_library();
    const SolidFuel fuel{.wood = library.woods.at("ash"),
                         .char_yield = library.bed.char_yield.value};
    const auto model = std::make_shared<const GasModel>(volatile_gas(fuel));
    surroundings.model = model;
    surroundings.pressure = constants::standard_pressure;
    surroundings.outdoor_density =
        model->mixture(dry_air()).density(air_temperature, surroundings.pressure);
    network.gas_temperature = [model](const GasState& gas) {
        return model->mixture(gas.mass_fraction).temperature(gas.enthalpy, 600);
    };
    room = add_boundary(network, "room", air(air_temperature));
    outdoors = add_boundary(network, "outdoors", air(air_temperature));
}

std::size_t GasBench::add_wall(double temperature) {
    Solid solid;
    solid.name = "wall " + std::to_string(network.solids.size());
    solid.curve = std::make_shared<EnthalpyCurve>(Table(500.0));
    solid.conductivity = std::make_shared<Table>(50.0);
    solid.mass = 1;
    solid.initial_temperature = temperature;
    solid.held = true;
    network.solids.push_back(std::move(solid));
    return network.solids.size() - 1;
}

JunctionId GasBench::add_junction(const std::string& name) {
    Junction junction;
    junction.name = name;
    network.junctions.push_back(std::move(junction));
    return JunctionId{network.junctions.size() - 1};
}

void GasBench::add_passage(JunctionId from, JunctionId to, GasPassageShape shape, bool inlet) {
    Passage passage;
    passage.name = "passage " + std::to_string(network.passages.size());
    passage.from = from;
    passage.to = to;
    passage.inlet = inlet;
    passage.law = std::make_unique<GasPassage>(std::move(shape), surroundings);
    network.passages.push_back(std::move(passage));
}

GasState GasBench::air(double temperature) const {
    GasState gas;
    gas.mass_fraction = dry_air();
    gas.enthalpy = surroundings.model->mixture(gas.mass_fraction).enthalpy(temperature);
    gas.temperature = temperature;
    return gas;
}

GasPassageShape plain_duct(double bore, double length, double rise, std::size_t cells) {
    GasPassageShape shape;
    shape.friction = false;
    const auto count = static_cast<double>(cells);
    for (std::size_t i = 0; i < cells; ++i)
        shape.cells.push_back(duct_cell(round_section(bore), length / count, rise / count));
    return shape;
}

}  // namespace drawwell

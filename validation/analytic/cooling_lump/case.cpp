#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <memory>

#include "solver/simulate.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr double mass = 2, heat_capacity = 500;  // [kg], [J/(kg K)]
constexpr double film = 20, area = 0.1;          // [W/(m2 K)], [m2]
constexpr double first = 800, room = 300;        // [K]

/// The solver wants a gas path: this one lets a little air through and touches no wall.
class Leak final : public PassageLaw {
  public:
    std::size_t cell_count() const override { return 1; }
    const std::vector<Touch>& touches() const override { return none_; }
    Crossing cross(const PassageInput& input, PassageRecord record) const override {
        GasCell& cell = record.cells[0];
        cell = {};
        cell.inlet_temperature = cell.mean_temperature = cell.outlet_temperature = room;
        return {input.gas, 0, 1e4 * input.mass_flow};
    }

  private:
    std::vector<Touch> none_;
};

void add_leak(Network& network) {
    Junction inside, outside;
    inside.name = "room";
    outside.name = "outdoors";
    inside.boundary = outside.boundary = true;
    inside.pressure = 1;
    network.junctions.push_back(inside);
    network.junctions.push_back(outside);
    Passage leak;
    leak.name = "leak";
    leak.from = JunctionId{0};
    leak.to = JunctionId{1};
    leak.inlet = true;
    leak.law = std::make_unique<Leak>();
    network.passages.push_back(std::move(leak));
    network.gas_temperature = [](const GasState&) { return room; };
}

Network lump() {
    Network network;
    add_leak(network);
    Solid solid;
    solid.name = "lump";
    solid.curve = std::make_shared<EnthalpyCurve>(Table(heat_capacity));
    solid.conductivity = std::make_shared<Table>(50.0);
    solid.mass = mass;
    solid.initial_temperature = first;
    network.solids.push_back(solid);
    OutsideFace face;
    face.name = "lump.outside";
    face.solids = {SolidId{0}};
    face.area = {area};
    face.flux = [](double, auto temperature, auto flux) {
        flux[0] = film * (temperature[0] - room);
    };
    network.outside.push_back(face);
    return finish(std::move(network));
}

/// Largest difference [K] from the exponential over an hour.
double worst_error(double tolerance) {
    const Network network = lump();
    const Topology topology = find_topology(network);
    HeatBalance balance(network, topology);
    Audit audit(network);
    double worst = 0;
    Simulation simulation;
    simulation.end = 3600;
    simulation.tolerance = tolerance;
    simulation.sample_every = 60;
    simulation.sample = [&](double time, auto, HeatBalance& at) {
        const double exact =
            room + (first - room) * std::exp(-time * film * area / (mass * heat_capacity));
        worst = std::max(worst, std::abs(at.temperature()[0] - exact));
        return true;
    };
    simulate(simulation, balance, audit);
    return worst;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a lump of metal cools along the exponential") {
        compare({"analytic/cooling_lump", "largest difference over an hour at tolerance 1e-4 [K]",
                 worst_error(1e-4), 0.08});
        compare(
            {"analytic/cooling_lump", "the same at tolerance 1e-6 [K]", worst_error(1e-6), 0.0008});
    }
}

#include "validation/bench.h"

#include <algorithm>
#include <utility>

namespace drawwell {
namespace {

class Leak final : public PassageLaw {
  public:
    std::size_t cell_count() const override { return 1; }
    const std::vector<Touch>& touches() const override { return none_; }
    Crossing cross(const PassageInput& input, PassageRecord record) const override {
        record.cells[0] = {};
        return {input.gas, 0, 1e4 * input.mass_flow};
    }

  private:
    std::vector<Touch> none_;
};

}  // namespace

Bench::Bench() {
    Junction inside, outside;
    inside.name = "room";
    outside.name = "outdoors";
    inside.boundary = outside.boundary = true;
    inside.pressure = 1;
    network.junctions = {inside, outside};
    Passage leak;
    leak.name = "leak";
    leak.from = JunctionId{0};
    leak.to = JunctionId{1};
    leak.inlet = true;
    leak.law = std::make_unique<Leak>();
    network.passages.push_back(std::move(leak));
    network.gas_temperature = [](const GasState&) { return 300.0; };
}

SolidId Bench::add(double mass, double heat_capacity, double conductivity, double temperature) {
    Solid solid;
    solid.name = "solid " + std::to_string(network.solids.size());
    solid.curve = std::make_shared<EnthalpyCurve>(Table(heat_capacity));
    solid.conductivity = std::make_shared<Table>(conductivity);
    solid.mass = mass;
    solid.initial_temperature = temperature;
    network.solids.push_back(std::move(solid));
    return SolidId{network.solids.size() - 1};
}

void Bench::add_face(SolidId solid, double area, std::function<double(double)> flux) {
    OutsideFace face;
    face.name = "face";
    face.solids = {solid};
    face.area = {area};
    face.flux = [flux = std::move(flux)](double, std::span<const double> temperature,
                                         std::span<double> out) { out[0] = flux(temperature[0]); };
    network.outside.push_back(std::move(face));
}

std::vector<SolidId> Bench::add_slab(const Slab& slab) {
    std::vector<SolidId> solids;
    const double width = slab.thickness / static_cast<double>(slab.cells - 1);
    for (std::size_t i = 0; i < slab.cells; ++i) {
        const bool end = i == 0 || i + 1 == slab.cells;
        solids.push_back(add(slab.density * slab.area * width * (end ? 0.5 : 1), slab.heat_capacity,
                             slab.conductivity, slab.temperature));
        if (i == 0) continue;
        const double shape = slab.area / (width / 2);
        network.links.push_back(
            {.a = solids[i - 1], .b = solids[i], .shape_a = shape, .shape_b = shape});
    }
    return solids;
}

std::vector<std::vector<double>> Bench::run(const std::vector<double>& times, double tolerance) {
    const Network whole = finish(std::move(network));
    const Topology topology = find_topology(whole);
    HeatBalance balance(whole, topology);
    Audit audit(whole);
    std::vector<std::vector<double>> shown;
    Simulation simulation;
    simulation.end = times.back();
    simulation.tolerance = tolerance;
    simulation.sample_every = times.front();
    simulation.sample = [&](double time, auto, HeatBalance& at) {
        const auto wanted = std::find_if(times.begin(), times.end(),
                                         [&](double t) { return std::abs(t - time) < 1e-6; });
        if (wanted != times.end())
            shown.emplace_back(at.temperature().begin(), at.temperature().end());
        return true;
    };
    simulate(simulation, balance, audit);
    return shown;
}

}  // namespace drawwell

#pragma once

#include <cmath>
#include <functional>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "solver/constants.h"
#include "solver/network.h"

namespace drawwell {

// Networks small enough to solve by hand: gas of constant heat capacity, walls of one material.

inline constexpr double gas_capacity = 1000;      // [J/(kg K)]
inline constexpr double air_temperature = 300;    // [K] of room and outdoors
inline constexpr double density_times_k = 353;    // [kg K/m3]
inline constexpr double solid_capacity = 500;     // [J/(kg K)]
inline constexpr double solid_conductivity = 40;  // [W/(m K)]

inline GasState gas_at(double temperature) {
    GasState gas;
    gas.enthalpy = gas_capacity * temperature;
    gas.temperature = temperature;
    gas.mass_fraction[n2] = 1;
    return gas;
}

inline double temperature_of(const GasState& gas) {
    return gas.enthalpy / gas_capacity;
}

/// A stretch of duct.
struct Duct {
    double rise = 0;                // [m]
    double square = 0, linear = 0;  // [Pa/(kg/s)2], [Pa/(kg/s)] of its loss
    std::vector<std::size_t> wall;  // solid that each cell touches
    double conductance = 0;         // [W/K] of each
    double unpaid = 0;              // [W] to each wall that is not taken from the gas: a fault
    /// [Pa] gained besides, against the flow [kg/s]: a fan, or a curve with several branches.
    std::function<double(double)> gain;
};

class DuctLaw final : public PassageLaw {
  public:
    explicit DuctLaw(Duct duct) : duct_(std::move(duct)) {
        for (std::size_t i = 0; i < duct_.wall.size(); ++i) touches_.push_back({i, duct_.wall[i]});
    }
    std::size_t cell_count() const override { return duct_.wall.empty() ? 1 : duct_.wall.size(); }
    const std::vector<Touch>& touches() const override { return touches_; }
    Crossing cross(const PassageInput& input, PassageRecord record) const override {
        Crossing crossing;
        GasState gas = input.gas;
        const std::size_t count = cell_count();
        const double flow = std::max(std::abs(input.mass_flow), 1e-12);
        for (std::size_t step = 0; step < count; ++step) {
            const std::size_t i = input.mass_flow >= 0 ? step : count - 1 - step;
            GasCell& cell = record.cells[i];
            cell = {};
            cell.capacity_flow = flow * gas_capacity;
            cell.inlet_temperature = temperature_of(gas);
            cell.mean_share = cell.pass_through = 1;
            double wall = 0;
            if (!touches_.empty()) {
                const double strides = duct_.conductance / cell.capacity_flow;
                wall = input.solid_temperature[duct_.wall[i]];
                cell.pass_through = std::exp(-strides);
                cell.mean_share = -std::expm1(-strides) / strides;
                record.conductance[i] = duct_.conductance;
                record.given[i] = duct_.unpaid;
            }
            const double over = cell.inlet_temperature - wall;
            cell.mean_temperature = wall + over * cell.mean_share;
            cell.outlet_temperature = wall + over * cell.pass_through;
            gas.enthalpy = gas_capacity * cell.outlet_temperature;
            crossing.buoyancy += constants::gravity * duct_.rise / static_cast<double>(count) *
                                 density_times_k *
                                 (1 / air_temperature - 1 / cell.mean_temperature);
        }
        const double signed_flow = input.mass_flow;
        crossing.loss =
            duct_.square * signed_flow * std::abs(signed_flow) + duct_.linear * signed_flow;
        if (duct_.gain) crossing.loss -= duct_.gain(signed_flow);
        crossing.outlet = gas;
        return crossing;
    }

  private:
    Duct duct_;
    std::vector<Touch> touches_;
};

/// Fuel that turns to hot nitrogen at a rate given in time. State: fuel left [kg].
class NitrogenFire final : public Fire {
  public:
    NitrogenFire(std::function<double(double)> rate, double value)
        : rate_(std::move(rate)), value_(value) {}

    std::size_t state_count() const override { return 1; }
    std::span<const double> state_scale() const override { return scale_; }
    std::size_t site_count() const override { return 1; }
    void set(const View&, std::span<double>) const override {}
    Emission emission(std::size_t, const View& view, const Arriving&) const override {
        Emission out;
        out.species[n2] = rate_(view.time);
        out.enthalpy_flow = rate_(view.time) * value_;
        return out;
    }
    void rates(const View& view, std::span<const Arriving>, std::span<const GasCell>,
               std::span<double> rate, std::span<double>) const override {
        rate[0] = -rate_(view.time);
    }
    double enthalpy(std::span<const double> fuel) const override { return fuel[0] * value_; }
    std::array<double, 4> elements(std::span<const double> fuel) const override {
        return {0, 0, 0, fuel[0]};
    }
    void rate_slopes(const View&, std::span<const Arriving>,
                     std::span<double> slope) const override {
        slope[0] = 0;
    }

  private:
    std::function<double(double)> rate_;  // [kg/s] against time [s]
    double value_;                        // [J/kg]
    std::array<double, 1> scale_{1};
};

inline SolidId add_solid(Network& network, const std::string& name, double mass, double temperature,
                         bool held = false) {
    Solid solid;
    solid.name = name;
    solid.curve = std::make_shared<EnthalpyCurve>(Table(solid_capacity));
    solid.conductivity = std::make_shared<Table>(solid_conductivity);
    solid.mass = mass;
    solid.initial_temperature = temperature;
    solid.held = held;
    network.solids.push_back(std::move(solid));
    return SolidId{network.solids.size() - 1};
}

/// A boundary if a pressure is given.
inline JunctionId add_boundary(Network& network, const std::string& name, double pressure = 0) {
    Junction junction;
    junction.name = name;
    junction.boundary = true;
    junction.pressure = pressure;
    junction.gas = gas_at(air_temperature);
    network.junctions.push_back(std::move(junction));
    return JunctionId{network.junctions.size() - 1};
}

inline JunctionId add_junction(Network& network, const std::string& name) {
    Junction junction;
    junction.name = name;
    network.junctions.push_back(std::move(junction));
    return JunctionId{network.junctions.size() - 1};
}

inline void add_passage(Network& network, const std::string& name, JunctionId from, JunctionId to,
                        Duct duct, bool inlet = false) {
    Passage passage;
    passage.name = name;
    passage.from = from;
    passage.to = to;
    passage.inlet = inlet;
    passage.law = std::make_unique<DuctLaw>(std::move(duct));
    network.passages.push_back(std::move(passage));
    network.gas_temperature = temperature_of;
}

/// A face that gives `film` [W/(m2 K)] times its excess over room air.
inline void add_face(Network& network, const std::string& name, SolidId solid, double area,
                     double film) {
    OutsideFace face;
    face.name = name;
    face.solids = {solid};
    face.area = {area};
    face.flux = [film](double, std::span<const double> temperature, std::span<double> flux) {
        for (std::size_t i = 0; i < flux.size(); ++i)
            flux[i] = film * (temperature[i] - air_temperature);
    };
    network.outside.push_back(std::move(face));
}

/// A network of one passage from room to outdoors, whose p_adv(x) is `curve`; no walls but one.
inline Network single_curve(std::function<double(double)> curve) {
    Network network;
    add_solid(network, "wall", 1, 300);
    const JunctionId room = add_boundary(network, "room");
    const JunctionId outdoors = add_boundary(network, "outdoors");
    Duct duct;
    duct.gain = std::move(curve);
    add_passage(network, "passage", room, outdoors, std::move(duct), true);
    return finish(std::move(network));
}

/// A stove in small: feed, fire, four-cell riser whose outer skin cools in the room, flue.
inline Network small_stove(double unpaid = 0) {
    Network network;
    const JunctionId room = add_boundary(network, "room");
    const JunctionId hearth = add_junction(network, "hearth");
    const JunctionId top = add_junction(network, "riser top");
    const JunctionId outdoors = add_boundary(network, "flue top");
    Duct riser;
    riser.rise = 1;
    riser.square = 8e3;
    riser.conductance = 1.5;
    riser.unpaid = unpaid;
    for (int i = 0; i < 4; ++i) {
        const SolidId inside = add_solid(network, "inside", 1.0, 300);
        const SolidId skin = add_solid(network, "skin", 0.5, 300);
        network.links.push_back({.a = inside, .b = skin, .shape_a = 0.05, .shape_b = 0.08});
        add_face(network, "skin", skin, 0.05, 12);
        riser.wall.push_back(index(inside));
    }
    Duct feed;
    feed.square = 4e3;
    feed.linear = 20;
    Duct flue;
    flue.rise = 2;
    flue.square = 6e3;
    add_passage(network, "feed", room, hearth, std::move(feed), true);
    add_passage(network, "riser", hearth, top, std::move(riser));
    add_passage(network, "flue", top, outdoors, std::move(flue));
    network.fire = std::make_unique<NitrogenFire>(
        [](double t) { return 2e-4 * (1 + 0.5 * std::sin(t / 150)); }, 2e7);
    network.fire_sites = {hearth};
    network.initial_fuel = {1.0};
    return finish(std::move(network));
}

}  // namespace drawwell

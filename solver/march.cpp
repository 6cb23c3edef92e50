#include "solver/march.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace drawwell {
namespace {

constexpr auto no_site = static_cast<std::size_t>(-1);
constexpr int most_rounds = 40;  // through a circle of gas
constexpr double still = 1e-3;   // [J/kg] change of enthalpy at which a circle is closed

/// Adds a stream to what arrives; its flame counts by the oxygen it began with.
void add(Arriving& sum, double mass_flow, const GasState& gas) {
    sum.mass_flow += mass_flow;
    sum.enthalpy_flow += mass_flow * gas.enthalpy;
    sum.gas.temperature += mass_flow * gas.temperature;
    for (std::size_t i = 0; i < species_count; ++i)
        sum.species[i] += mass_flow * gas.mass_fraction[i];
    const double weight = mass_flow * gas.flame.oxygen;
    sum.gas.flame.oxygen += weight;
    sum.gas.flame.path += weight * gas.flame.path;
    sum.gas.flame.length += weight * gas.flame.length;
}

void settle(Arriving& sum) {
    sum.gas.enthalpy = sum.enthalpy_flow / sum.mass_flow;
    sum.gas.temperature /= sum.mass_flow;
    for (std::size_t i = 0; i < species_count; ++i)
        sum.gas.mass_fraction[i] = sum.species[i] / sum.mass_flow;
    if (sum.gas.flame.oxygen > 0) {
        sum.gas.flame.path /= sum.gas.flame.oxygen;
        sum.gas.flame.length /= sum.gas.flame.oxygen;
        sum.gas.flame.oxygen /= sum.mass_flow;
    }
}

}  // namespace

March::March(const Network& network, const Topology& topology)
    : network_(network),
      topology_(topology),
      at_junction_(network.junctions.size()),
      site_of_(network.junctions.size(), no_site),
      around_at_(std::numeric_limits<double>::quiet_NaN()),
      flow_(network.passages.size()),
      emitted_(network.fire_sites.size()),
      carried_(network.fire_sites.size()),
      conductance_(network.touch_count),
      given_(network.touch_count),
      gas_(network.junctions.size()),
      crossing_(network.passages.size()),
      arrived_(network.fire_sites.size()),
      cells_(network.gas_cell_count),
      junction_progress_(network.junctions.size()),
      passage_progress_(network.passages.size()) {
    for (std::size_t p = 0; p < network.passages.size(); ++p) {
        at_junction_[index(network.passages[p].from)].push_back(p);
        at_junction_[index(network.passages[p].to)].push_back(p);
    }
    for (std::size_t s = 0; s < network.fire_sites.size(); ++s)
        site_of_[index(network.fire_sites[s])] = s;
    const auto first_air = std::find_if(network.junctions.begin(), network.junctions.end(),
                                        [](const Junction& j) { return j.boundary; });
    still_air_ = first_air->gas;
    for (std::size_t j = 0; j < gas_.size(); ++j)
        gas_[j] = network.junctions[j].boundary ? network.junctions[j].gas : still_air_;
    around_.gas = gas_;
    for (const Junction& junction : network.junctions)
        around_.pressure.push_back(junction.pressure);
    around_.settings = network.settings;
    for (Crossing& crossing : crossing_) crossing.outlet = still_air_;  // where a circle begins
}

void March::look_around(double time) {
    if (network_.change && time != around_at_) {
        network_.change(time, around_);
        for (std::size_t j = 0; j < gas_.size(); ++j)
            if (network_.junctions[j].boundary) gas_[j] = around_.gas[j];
    }
    around_at_ = time;
}

void March::begin(const Conditions& conditions, std::span<const double> inlet_flow,
                  std::span<const double> emission) {
    conditions_ = conditions;
    look_around(conditions.time);
    for (std::size_t p = 0; p < flow_.size(); ++p) {
        flow_[p] = 0;
        for (std::size_t k = 0; k < inlet_flow.size(); ++k)
            flow_[p] += topology_.by_inlet[p][k] * inlet_flow[k];
        for (std::size_t s = 0; s < emission.size(); ++s)
            flow_[p] += topology_.by_site[p][s] * emission[s];
    }
    carried_.assign(emission.begin(), emission.end());
    std::fill(junction_progress_.begin(), junction_progress_.end(), Progress::none);
    std::fill(passage_progress_.begin(), passage_progress_.end(), Progress::none);
    order_.clear();
    circle_ = false;
    if (network_.fire)
        network_.fire->set({conditions.time, conditions.fuel, conditions.solid_temperature},
                           around_.settings);
}

double March::imbalance(std::size_t loop) {
    const auto round = [&] {
        double sum = 0;
        for (const Topology::End& end : topology_.loop_ends[loop])
            sum += end.share * around_.pressure[end.junction];
        for (std::size_t p = 0; p < flow_.size(); ++p)
            if (const double share = topology_.loop[loop][p]; share != 0) {
                const Crossing& crossing = cross(p);
                sum += share * (crossing.buoyancy - crossing.loss);
            }
        return sum;
    };
    double sum = round();
    if (circle_) {
        complete();
        sum = round();
    }
    return sum;
}

void March::complete() {
    for (int i = 0; i < most_rounds; ++i) {
        for (std::size_t p = 0; p < flow_.size(); ++p) cross(p);
        for (std::size_t j = 0; j < gas_.size(); ++j) gas_of(j);
        if (!circle_) return;
        const std::vector<GasState> before = gas_;
        std::fill(junction_progress_.begin(), junction_progress_.end(), Progress::none);
        std::fill(passage_progress_.begin(), passage_progress_.end(), Progress::none);
        order_.clear();
        circle_ = false;
        for (std::size_t p = 0; p < flow_.size(); ++p) cross(p);
        double change = 0;
        for (std::size_t j = 0; j < gas_.size(); ++j)
            change = std::max(change, std::abs(gas_[j].enthalpy - before[j].enthalpy));
        if (change < still) return;
    }
}

const GasState& March::gas_of(std::size_t junction) {
    if (network_.junctions[junction].boundary || junction_progress_[junction] == Progress::done)
        return gas_[junction];
    if (junction_progress_[junction] == Progress::under_way) {
        circle_ = true;
        return gas_[junction];
    }
    junction_progress_[junction] = Progress::under_way;
    mix(junction);
    junction_progress_[junction] = Progress::done;
    return gas_[junction];
}

void March::mix(std::size_t junction) {
    Arriving sum;
    sum.gas.temperature = 0;
    for (const std::size_t p : at_junction_[junction]) {
        const bool ends_here = index(network_.passages[p].to) == junction;
        if (!((ends_here ? flow_[p] : -flow_[p]) > 0)) continue;
        const GasState& outlet = cross(p).outlet;  // a fire on its way may have swollen its flow
        add(sum, std::abs(flow_[p]), outlet);
    }
    if (sum.mass_flow < creeping_flow) add(sum, creeping_flow - sum.mass_flow, still_air_);
    settle(sum);
    const std::size_t site = site_of_[junction];
    if (site == no_site) {
        gas_[junction] = sum.gas;
        return;
    }
    const Emission emission = network_.fire->emission(
        site, {conditions_.time, conditions_.fuel, conditions_.solid_temperature}, sum);
    arrived_[site] = sum;
    emitted_[site] = 0;
    for (std::size_t i = 0; i < species_count; ++i) {
        sum.species[i] += emission.species[i];
        emitted_[site] += emission.species[i];
    }
    sum.mass_flow += emitted_[site];
    sum.enthalpy_flow += emission.enthalpy_flow;
    sum.gas.flame = {};
    sum.gas.temperature *= sum.mass_flow;  // what the fire adds is not known here
    settle(sum);
    sum.gas.flame = emission.flame;
    gas_[junction] = sum.gas;
    carry_on(site);
}

void March::carry_on(std::size_t site) {
    const double more = emitted_[site] - carried_[site];
    const auto may_change = [&](std::size_t p) {
        const double changed = flow_[p] + topology_.by_site[p][site] * more;
        return topology_.by_site[p][site] == 0 ||
               (passage_progress_[p] != Progress::done && (changed >= 0) == (flow_[p] >= 0));
    };
    for (std::size_t p = 0; p < flow_.size(); ++p)
        if (!may_change(p)) return;
    for (std::size_t p = 0; p < flow_.size(); ++p) flow_[p] += topology_.by_site[p][site] * more;
    carried_[site] = emitted_[site];
}

double March::unsettled() const {
    double most = 0;
    for (std::size_t s = 0; s < emitted_.size(); ++s)
        most = std::max(most, std::abs(emitted_[s] - carried_[s]));
    return most;
}

const Crossing& March::cross(std::size_t p) {
    if (passage_progress_[p] == Progress::under_way) circle_ = true;
    if (passage_progress_[p] != Progress::none) return crossing_[p];
    passage_progress_[p] = Progress::under_way;
    const Passage& passage = network_.passages[p];
    const JunctionId upstream = flow_[p] >= 0 ? passage.from : passage.to;
    const GasState& gas = gas_of(index(upstream));
    const PassageInput input{.mass_flow = flow_[p],
                             .gas = gas,
                             .solid_temperature = conditions_.solid_temperature,
                             .settings = around_.settings};
    const std::size_t touches = passage.law->touches().size();
    crossing_[p] = passage.law->cross(
        input, {std::span(cells_).subspan(passage.first_cell, passage.law->cell_count()),
                std::span(conductance_).subspan(passage.first_touch, touches),
                std::span(given_).subspan(passage.first_touch, touches)});
    passage_progress_[p] = Progress::done;
    order_.push_back(p);
    return crossing_[p];
}

}  // namespace drawwell

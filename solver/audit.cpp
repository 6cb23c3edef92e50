#include "solver/audit.h"

#include <cmath>
#include <utility>

namespace drawwell {
namespace {

double enthalpy_of_solids(const Network& network, std::span<const double> state) {
    double sum = 0;
    for (std::size_t i = 0; i < network.solids.size(); ++i)
        if (!network.solids[i].held) sum += state[i];
    return sum;
}

}  // namespace

Audit::Audit(const Network& network) : network_(network) {
    totals_.outside.resize(network.outside.size());
    totals_.boundary_heat.resize(network.junctions.size());
    totals_.boundary_gas.resize(network.junctions.size());
}

void Audit::gather(const HeatBalance& balance, std::vector<double>& values) const {
    const Fluxes& fluxes = balance.fluxes();
    values.clear();
    values.insert(values.end(), fluxes.outside.begin(), fluxes.outside.end());
    values.push_back(fluxes.held);
    values.push_back(fluxes.extra);
    for (std::size_t j = 0; j < fluxes.boundary_heat.size(); ++j) {
        values.push_back(fluxes.boundary_heat[j]);
        values.insert(values.end(), fluxes.boundary_gas[j].begin(), fluxes.boundary_gas[j].end());
    }
}

void Audit::add(const std::vector<double>& integral) {
    std::size_t at = 0;
    for (double& outside : totals_.outside) outside += integral[at++];
    totals_.held += integral[at++];
    totals_.extra += integral[at++];
    for (std::size_t j = 0; j < totals_.boundary_heat.size(); ++j) {
        totals_.boundary_heat[j] += integral[at++];
        double out = 0;
        for (double& mass : totals_.boundary_gas[j]) {
            out += integral[at];
            mass += integral[at++];
        }
        if (out > 0) gas_out_ += out;
    }
}

void Audit::open(double time, std::span<const double> state, const HeatBalance& balance) {
    const auto fuel = state.subspan(network_.solids.size());
    stored_at_start_ = enthalpy_of_solids(network_, state);
    if (network_.fire) {
        fuel_at_start_ = network_.fire->enthalpy(fuel);
        elements_at_start_ = network_.fire->elements(fuel);
    }
    time_[2] = time;
    gather(balance, value_[2]);
    known_ = 1;
}

void Audit::step(double time, const HeatBalance& balance) {
    std::swap(value_[0], value_[1]);
    std::swap(value_[1], value_[2]);
    time_ = {time_[1], time_[2], time};
    gather(balance, value_[2]);
    known_ = std::min(known_ + 1, 3);
    const double h = time_[2] - time_[1];
    // Over the last of three points: the trapezium, less the parabola's share above it.
    double bend = 0, before = 1;
    if (known_ == 3) {
        before = time_[1] - time_[0];
        bend = h * h * h / (6 * (h + before));
    }
    std::vector<double> integral(value_[2].size());
    for (std::size_t i = 0; i < integral.size(); ++i) {
        integral[i] = h * (value_[1][i] + value_[2][i]) / 2;
        if (known_ == 3)
            integral[i] -=
                bend * ((value_[2][i] - value_[1][i]) / h - (value_[1][i] - value_[0][i]) / before);
    }
    add(integral);
}

void Audit::close(std::span<const double> state) {
    totals_.stored += enthalpy_of_solids(network_, state) - stored_at_start_;
    if (!network_.fire) return;
    const auto fuel = state.subspan(network_.solids.size());
    totals_.fuel_used += fuel_at_start_ - network_.fire->enthalpy(fuel);
    const auto elements = network_.fire->elements(fuel);
    for (std::size_t i = 0; i < elements.size(); ++i)
        totals_.fuel_elements[i] += elements_at_start_[i] - elements[i];
}

double Audit::energy_residual(double scale) const {
    double out = totals_.held + totals_.stored - totals_.fuel_used - totals_.extra;
    for (const double heat : totals_.outside) out += heat;
    for (const double heat : totals_.boundary_heat) out += heat;
    return std::abs(out) / scale;
}

double Audit::mass_residual(double fuel_mass) const {
    double out = -fuel_mass;
    for (const Composition& gas : totals_.boundary_gas)
        for (const double mass : gas) out += mass;
    return gas_out_ > 0 ? std::abs(out) / gas_out_ : 0;
}

}  // namespace drawwell

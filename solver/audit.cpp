#include "solver/audit.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace drawwell {
namespace {

constexpr double far_shorter = 10;  // [-] of two steps

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
    time_.back() = time;
    gather(balance, value_.back());
    known_ = 1;
}

void Audit::step(double time, const HeatBalance& balance) {
    std::rotate(time_.begin(), time_.begin() + 1, time_.end());
    std::rotate(value_.begin(), value_.begin() + 1, value_.end());
    time_.back() = time;
    gather(balance, value_.back());
    known_ = std::min(known_ + 1, 4);
    if (known_ > 2) add_interval(1, known_ > 3, true);
}

void Audit::add_interval(std::size_t from, bool bend_before, bool bend_after) {
    // The trapezium less h^3/12 f'', with f'' the mean of what the neighbours on each side tell.
    // A neighbour far shorter is a change of branch being located: it tells of no bend.
    const double h = time_[from + 1] - time_[from];
    const auto tells = [&](std::size_t first) {
        return time_[first + 1] - time_[first] > h / far_shorter;
    };
    bend_before = bend_before && tells(from - 1);
    bend_after = bend_after && tells(from + 1);
    const double weight = h * h * h / 12 / std::max(1, bend_before + bend_after);
    const auto bend = [&](std::size_t first, std::size_t i) {
        const double a = time_[first + 1] - time_[first], b = time_[first + 2] - time_[first + 1];
        return 2 *
               ((value_[first + 2][i] - value_[first + 1][i]) / b -
                (value_[first + 1][i] - value_[first][i]) / a) /
               (a + b);
    };
    std::vector<double> integral(value_[from].size());
    for (std::size_t i = 0; i < integral.size(); ++i) {
        integral[i] = h * (value_[from][i] + value_[from + 1][i]) / 2;
        if (bend_before) integral[i] -= weight * bend(from - 1, i);
        if (bend_after) integral[i] -= weight * bend(from, i);
    }
    add(integral);
}

void Audit::close(std::span<const double> state) {
    if (known_ > 1) add_interval(2, known_ > 2, false);
    known_ = 0;
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

#include "solver/heat_balance.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::stefan_boltzmann;

constexpr double warmer = 0.5;  // [K] for slopes by differences

double fourth(double t) {
    const double square = t * t;
    return square * square;
}

/// As gas on its way through the stove meets them, those that only radiation reaches at the end.
std::vector<std::size_t> solids_that_gas_or_radiation_reaches(const Network& network) {
    std::vector<bool> reached(network.solids.size());
    std::vector<std::size_t> coupled;
    const auto reach = [&](std::size_t solid) {
        if (!reached[solid]) coupled.push_back(solid);
        reached[solid] = true;
    };
    for (const Passage& passage : network.passages)
        for (const Touch& touch : passage.law->touches()) reach(touch.solid);
    for (const RadiationEnclosure& enclosure : network.enclosures)
        for (const auto& patch : enclosure.patches)
            for (const auto& share : patch) reach(index(share.solid));
    return coupled;
}

}  // namespace

HeatBalance::HeatBalance(const Network& network, const Topology& topology)
    : network_(network),
      flow_(network, topology),
      temperature_(network.solids.size()),
      conductivity_(network.solids.size()),
      heat_(network.solids.size()),
      fire_heat_(network.solids.size()),
      heat_capacity_(network.solids.size()),
      fuel_slope_(network.initial_fuel.size()) {
    std::vector<std::pair<std::size_t, std::size_t>> links;
    for (const ConductionLink& link : network.links)
        links.emplace_back(index(link.a), index(link.b));
    matrix_ = std::make_unique<StructuredMatrix>(network.solids.size(), links,
                                                 solids_that_gas_or_radiation_reaches(network));
    for (const OutsideFace& face : network.outside) {
        face_temperature_.emplace_back(face.solids.size());
        face_flux_.emplace_back(face.solids.size());
    }
    fluxes_.outside.resize(network.outside.size());
    fluxes_.boundary_heat.resize(network.junctions.size());
    fluxes_.boundary_gas.resize(network.junctions.size());
}

Flow::Conditions HeatBalance::conditions(double time, std::span<const double> state) {
    network_.temperatures(state, temperature_);
    time_ = time;
    fuel_ = state.subspan(network_.solids.size());
    return {time, temperature_, fuel_};
}

void HeatBalance::rates(double time, std::span<const double> state, std::span<double> rate) {
    flow_.solve(conditions(time, state));
    sum_up(rate);
}

double HeatBalance::rates_at_flow(double time, std::span<const double> state, double inlet_flow,
                                  std::span<double> rate) {
    const double push = flow_.adverse_pressure(conditions(time, state), inlet_flow);
    sum_up(rate);
    return push;
}

void HeatBalance::sum_up(std::span<double> rate) {
    ++evaluations_;
    std::fill(heat_.begin(), heat_.end(), 0.0);
    fluxes_.extra = 0;
    if (network_.extra_heat) {
        network_.extra_heat(time_, heat_);
        for (const double heat : heat_) fluxes_.extra += heat;
    }
    conduct(heat_);
    radiate(heat_);
    meet_gas(heat_);
    lose_outside(heat_);
    if (network_.fire) {
        std::fill(fire_heat_.begin(), fire_heat_.end(), 0.0);
        network_.fire->rates({time_, fuel_, temperature_}, flow_.march().arrived(),
                             flow_.march().cells(), rate.subspan(network_.solids.size()),
                             fire_heat_);
        for (std::size_t i = 0; i < heat_.size(); ++i) heat_[i] += fire_heat_[i];
    }
    leave_by_gas();
    fluxes_.held = 0;
    for (std::size_t i = 0; i < heat_.size(); ++i) {
        rate[i] = network_.solids[i].held ? 0.0 : heat_[i];
        if (network_.solids[i].held) fluxes_.held += heat_[i];
    }
}

double HeatBalance::conductance(const ConductionLink& link) const {
    const double resistance = 1 / (conductivity_[index(link.a)] * link.shape_a) +
                              1 / (conductivity_[index(link.b)] * link.shape_b) + link.contact;
    return (link.share ? link.share(time_, temperature_) : 1.0) / resistance;
}

void HeatBalance::conduct(std::span<double> heat) {
    for (std::size_t i = 0; i < conductivity_.size(); ++i)
        conductivity_[i] = (*network_.solids[i].conductivity)(temperature_[i]);
    for (const ConductionLink& link : network_.links) {
        const std::size_t a = index(link.a), b = index(link.b);
        const double flow = conductance(link) * (temperature_[a] - temperature_[b]);
        heat[a] -= flow;
        heat[b] += flow;
    }
}

void HeatBalance::radiate(std::span<double> heat) {
    for (const RadiationEnclosure& enclosure : network_.enclosures) {
        const std::size_t n = enclosure.patches.size();
        patch_.assign(n, 0.0);
        for (std::size_t i = 0; i < n; ++i)
            for (const auto& share : enclosure.patches[i])
                patch_[i] += share.weight * fourth(temperature_[index(share.solid)]);
        for (std::size_t i = 0; i < n; ++i) {
            double net = 0;
            for (std::size_t j = 0; j < n; ++j)
                net += enclosure.exchange_area[i * n + j] * (patch_[j] - patch_[i]);
            for (const auto& share : enclosure.patches[i])
                heat[index(share.solid)] += share.weight * stefan_boltzmann * net;
        }
    }
}

void HeatBalance::meet_gas(std::span<double> heat) const {
    const auto cells = flow_.march().cells();
    const auto conductance = flow_.march().conductance();
    const auto given = flow_.march().given();
    for (const Passage& passage : network_.passages) {
        const auto& touches = passage.law->touches();
        for (std::size_t k = 0; k < touches.size(); ++k)
            heat[touches[k].solid] +=
                given[passage.first_touch + k] +
                conductance[passage.first_touch + k] *
                    (cells[passage.first_cell + touches[k].gas_cell].mean_temperature -
                     temperature_[touches[k].solid]);
    }
}

void HeatBalance::lose_outside(std::span<double> heat) {
    for (std::size_t f = 0; f < network_.outside.size(); ++f) {
        const OutsideFace& face = network_.outside[f];
        for (std::size_t i = 0; i < face.solids.size(); ++i)
            face_temperature_[f][i] = temperature_[index(face.solids[i])];
        face.flux(time_, face_temperature_[f], face_flux_[f]);
        fluxes_.outside[f] = 0;
        for (std::size_t i = 0; i < face.solids.size(); ++i) {
            const double loss = face_flux_[f][i] * face.area[i];
            heat[index(face.solids[i])] -= loss;
            fluxes_.outside[f] += loss;
        }
    }
}

void HeatBalance::leave_by_gas() {
    std::fill(fluxes_.boundary_heat.begin(), fluxes_.boundary_heat.end(), 0.0);
    std::fill(fluxes_.boundary_gas.begin(), fluxes_.boundary_gas.end(), Composition{});
    const March& march = flow_.march();
    for (std::size_t p = 0; p < network_.passages.size(); ++p) {
        const Passage& passage = network_.passages[p];
        const double flow = march.mass_flow(p);
        for (const bool at_end : {false, true}) {
            const JunctionId end = at_end ? passage.to : passage.from;
            if (!network_.junctions[index(end)].boundary) continue;
            const double out = at_end ? flow : -flow;  // leaving the stove
            const GasState& gas = out > 0 ? march.crossing(p).outlet : march.junction_gas(end);
            fluxes_.boundary_heat[index(end)] += out * gas.enthalpy;
            for (std::size_t s = 0; s < species_count; ++s)
                fluxes_.boundary_gas[index(end)][s] += out * gas.mass_fraction[s];
        }
    }
}

void HeatBalance::linearise() {
    matrix_->clear();
    for (std::size_t i = 0; i < network_.solids.size(); ++i)
        heat_capacity_[i] = network_.solids[i].held
                                ? 1e30  // stays where it is
                                : network_.solids[i].mass *
                                      network_.solids[i].curve->heat_capacity(temperature_[i]);
    for (std::size_t l = 0; l < network_.links.size(); ++l) {
        const ConductionLink& link = network_.links[l];
        const std::size_t a = index(link.a), b = index(link.b);
        const double through = conductance(link);
        matrix_->diagonal(a) += through;
        matrix_->diagonal(b) += through;
        matrix_->link(l) = -through;
    }
    for (std::size_t f = 0; f < network_.outside.size(); ++f) {
        const OutsideFace& face = network_.outside[f];
        for (double& t : face_temperature_[f]) t += warmer;
        std::vector<double> flux(face.solids.size());
        face.flux(time_, face_temperature_[f], flux);
        for (std::size_t i = 0; i + face.gauges < face.solids.size(); ++i)
            matrix_->diagonal(index(face.solids[i])) +=
                std::max(0.0, (flux[i] - face_flux_[f][i]) / warmer * face.area[i]);
    }
    couple_by_radiation();
    couple_by_gas();
    if (!network_.fire) return;
    network_.fire->rate_slopes({time_, fuel_, temperature_}, flow_.march().arrived(), fuel_slope_);
    couple_by_fire();
}

void HeatBalance::couple_by_fire() {
    // What the fire takes from walls that see it, as they would have it a little warmer.
    std::vector<double> walls = temperature_, rate(fuel_.size()), heat(temperature_.size());
    for (double& t : walls) t += warmer;
    network_.fire->rates({time_, fuel_, walls}, flow_.march().arrived(), flow_.march().cells(),
                         rate, heat);
    for (std::size_t i = 0; i < heat.size(); ++i)
        if (const double slope = (fire_heat_[i] - heat[i]) / warmer; slope > 0)
            matrix_->diagonal(i) += slope;
}

void HeatBalance::couple_by_radiation() {
    for (const RadiationEnclosure& enclosure : network_.enclosures) {
        const std::size_t n = enclosure.patches.size();
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t j = 0; j < n; ++j) {
                const double area = enclosure.exchange_area[i * n + j];
                if (i == j || area == 0) continue;
                for (const auto& to : enclosure.patches[i]) {
                    const std::size_t row = matrix_->place(index(to.solid));
                    const auto add = [&](const RadiationEnclosure::Share& share, double sign) {
                        const double t = temperature_[index(share.solid)];
                        matrix_->dense(row, matrix_->place(index(share.solid))) +=
                            sign * to.weight * share.weight * 4 * stefan_boltzmann * area * t * t *
                            t;
                    };
                    for (const auto& share : enclosure.patches[i]) add(share, 1);
                    for (const auto& share : enclosure.patches[j]) add(share, -1);
                }
            }
    }
}

void HeatBalance::couple_by_gas() {
    // Sensitivity of the gas to every coupled wall, carried along with the gas from its inlets.
    const std::size_t n = matrix_->coupled_count();
    const March& march = flow_.march();
    std::vector<std::vector<double>> at_junction(network_.junctions.size());
    std::vector<double> weight(network_.junctions.size());
    std::vector<double> gas(n), mean(n);
    for (const std::size_t p : march.order()) {
        const Passage& passage = network_.passages[p];
        const bool forward = march.mass_flow(p) >= 0;
        const std::size_t up = index(forward ? passage.from : passage.to);
        const std::size_t down = index(forward ? passage.to : passage.from);
        std::fill(gas.begin(), gas.end(), 0.0);
        if (!at_junction[up].empty() && weight[up] > 0)
            for (std::size_t c = 0; c < n; ++c) gas[c] = at_junction[up][c] / weight[up];

        const auto& touches = passage.law->touches();
        const std::size_t count = passage.law->cell_count();
        double capacity_flow = 0;
        for (std::size_t step = 0; step < count; ++step) {
            const std::size_t i = forward ? step : count - 1 - step;
            const GasCell& cell = march.cells()[passage.first_cell + i];
            capacity_flow = cell.capacity_flow;
            const auto range = std::ranges::equal_range(touches, i, {}, &Touch::gas_cell);
            const std::span here(range.begin(), range.end());
            const auto first = static_cast<std::size_t>(range.begin() - touches.begin());
            const auto conductance =
                march.conductance().subspan(passage.first_touch + first, here.size());
            const double total = std::accumulate(conductance.begin(), conductance.end(), 0.0);
            for (std::size_t c = 0; c < n; ++c) mean[c] = cell.mean_share * gas[c];
            for (std::size_t c = 0; c < n; ++c) gas[c] *= cell.pass_through;
            if (!(total > 0)) continue;
            for (std::size_t k = 0; k < here.size(); ++k) {
                const double share = conductance[k] / total;
                const std::size_t c = matrix_->place(here[k].solid);
                mean[c] += (1 - cell.mean_share) * share;
                gas[c] += (1 - cell.pass_through) * share;
            }
            for (std::size_t k = 0; k < here.size(); ++k) {
                const std::size_t row = matrix_->place(here[k].solid);
                for (std::size_t c = 0; c < n; ++c)
                    matrix_->dense(row, c) -= conductance[k] * mean[c];
                matrix_->diagonal(here[k].solid) += conductance[k];
            }
        }
        at_junction[down].resize(n);
        for (std::size_t c = 0; c < n; ++c) at_junction[down][c] += capacity_flow * gas[c];
        weight[down] += capacity_flow;
    }
}

void HeatBalance::factor(double gamma_step) {
    gamma_step_ = gamma_step;
    std::vector<double> shift(heat_capacity_.size());
    for (std::size_t i = 0; i < shift.size(); ++i) shift[i] = heat_capacity_[i] / gamma_step;
    matrix_->factor(1, shift);
}

void HeatBalance::solve(std::span<double> x) const {
    const std::size_t n = heat_capacity_.size();
    matrix_->solve(x.first(n));  // as temperatures
    for (std::size_t i = 0; i < n; ++i) x[i] *= network_.solids[i].held ? 0.0 : heat_capacity_[i];
    for (std::size_t i = n; i < x.size(); ++i) x[i] /= 1 / gamma_step_ - fuel_slope_[i - n];
}

}  // namespace drawwell

#include "solver/settled_walls.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double first_step = 200, last_step = 1e8;  // [s]
constexpr double growth = 8, setback = 8;            // [-] of the step
constexpr double stride = 250;                       // [K] most that a wall may move in one step
constexpr double at_rest = 0.3;                      // [K] of the last move, and what is left of it
constexpr int most_iterations = 80;
constexpr int parts = 6;  // of the flow, for the sustained push

/// The largest move of a wall [K] that the change of enthalpy means.
double largest_move(const Network& network, std::span<const double> state,
                    std::span<const double> change) {
    double most = 0;
    for (std::size_t i = 0; i < network.solids.size(); ++i) {
        const Solid& solid = network.solids[i];
        if (solid.held) continue;
        const double before = solid.curve->temperature(state[i] / solid.mass);
        const double capacity = solid.mass * solid.curve->heat_capacity(before);
        most = std::max(most, std::abs(change[i]) / capacity);
    }
    return most;
}

}  // namespace

double settle_walls(HeatBalance& balance, double time, double inlet_flow, std::span<double> state) {
    const Network& network = balance.network();
    const std::size_t walls = network.solids.size();
    std::vector<double> change(state.size());
    double step = first_step;
    double push = balance.rates_at_flow(time, state, inlet_flow, change);
    for (int i = 0; i < most_iterations; ++i) {
        balance.linearise();
        std::fill(change.begin() + static_cast<std::ptrdiff_t>(walls), change.end(), 0.0);
        double move = 0;
        for (const std::vector<double> heat = change;; step /= setback) {
            balance.factor(step);
            change = heat;
            balance.solve(change);
            move = largest_move(network, state, change);
            if (move < stride || step < 1e-3) break;
        }
        for (std::size_t k = 0; k < walls; ++k) state[k] += change[k];
        push = balance.rates_at_flow(time, state, inlet_flow, change);
        if (step >= last_step / growth && move < at_rest) return push;
        step = std::min(step * growth, last_step);
    }
    throw SolverError("the walls come to no rest at this flow");
}

ReserveDraw sustained_push(HeatBalance& balance, double time, std::span<const double> state,
                           double most_flow) {
    if (!(most_flow > 0)) return {};
    std::vector<double> walls(state.begin(), state.end());
    ReserveDraw best;
    double before = 0, next = 0;  // [Pa] on either side of the best
    bool after_best = false;
    const double part = most_flow / parts;
    for (int i = parts; i >= 1; --i) {
        const double flow = i * part;
        const double push = settle_walls(balance, time, flow, walls);
        if (i == parts || push > best.pressure) {
            before = i == parts ? push : best.pressure;
            best = {push, flow};
            after_best = false;
        } else if (!after_best) {
            next = push;
            after_best = true;
        } else {
            break;  // two in a row below the top
        }
    }
    if (best.flow >= most_flow || !after_best) return best;
    // The top of the parabola through the best and its neighbours.
    const double bend = before - 2 * best.pressure + next;
    if (!(bend < 0)) return best;
    const double shift = std::clamp(0.5 * (next - before) / bend, -1.0, 1.0);
    const double flow = best.flow + shift * part;
    const double push = settle_walls(balance, time, flow, walls);
    return push > best.pressure ? ReserveDraw{push, flow} : best;
}

}  // namespace drawwell

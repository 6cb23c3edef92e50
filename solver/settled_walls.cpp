#include "solver/settled_walls.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <vector>

#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double first_step = 200, last_step = 1e8;  // [s]
constexpr double growth = 30;                        // [-] of the step
constexpr double stride = 250;                       // [K] most that a wall may move in one step
constexpr double at_rest = 0.2;                      // [K] of the next move
constexpr int most_iterations = 60;
constexpr Eigen::Index remembered = 6;  // moves
constexpr int parts = 6;                // of the flow, for the sustained push

/// Heat capacity [J/K] of every wall; endless where it is held.
Eigen::VectorXd capacities(const Network& network, std::span<const double> temperature) {
    Eigen::VectorXd capacity(static_cast<Eigen::Index>(network.solids.size()));
    for (std::size_t i = 0; i < network.solids.size(); ++i) {
        const Solid& solid = network.solids[i];
        capacity(static_cast<Eigen::Index>(i)) =
            solid.held ? 1e30 : solid.mass * solid.curve->heat_capacity(temperature[i]);
    }
    return capacity;
}

/// Mixes a move with those before it so that what their course has in common is overcome:
/// Anderson's acceleration. The Jacobian leaves out how films and flames answer the walls, and
/// moves by it alone may swing about the rest for ever. All in kelvin.
class Mixer {
  public:
    Eigen::VectorXd mix(const Eigen::VectorXd& move) {
        Eigen::VectorXd mixed = move;
        if (last_move_.size() > 0) {
            const Eigen::Index known = std::min(remembered - 1, turns_.cols());
            Eigen::MatrixXd turns(move.size(), known + 1), ways(move.size(), known + 1);
            turns << turns_.rightCols(known), move - last_move_;
            ways << ways_.rightCols(known), last_mixed_;
            turns_ = turns;
            ways_ = ways;
            const Eigen::VectorXd share = turns_.colPivHouseholderQr().solve(move);
            if (share.allFinite()) mixed -= (ways_ + turns_) * share;
        } else {
            turns_.resize(move.size(), 0);
            ways_.resize(move.size(), 0);
        }
        const double most = mixed.lpNorm<Eigen::Infinity>();
        if (most > stride) mixed *= stride / most;
        last_move_ = move;
        last_mixed_ = mixed;
        return mixed;
    }

  private:
    Eigen::MatrixXd turns_, ways_;  // how moves differed, and what was walked between
    Eigen::VectorXd last_move_, last_mixed_;
};

}  // namespace

double settle_walls(HeatBalance& balance, double time, double inlet_flow, std::span<double> state) {
    const std::size_t walls = balance.network().solids.size();
    std::vector<double> change(state.size());
    double step = first_step;
    double push = balance.rates_at_flow(time, state, inlet_flow, change);
    Mixer mixer;
    for (int i = 0; i < most_iterations; ++i) {
        balance.linearise();
        balance.factor(step);
        std::fill(change.begin() + static_cast<std::ptrdiff_t>(walls), change.end(), 0.0);
        balance.solve(change);
        const Eigen::VectorXd capacity = capacities(balance.network(), balance.temperature());
        const Eigen::VectorXd move =
            Eigen::Map<const Eigen::VectorXd>(change.data(), capacity.size())
                .cwiseQuotient(capacity);
        const double most = move.lpNorm<Eigen::Infinity>();
        if (step == last_step && most < at_rest) return push;
        const Eigen::VectorXd mixed = step == last_step
                                          ? mixer.mix(move)
                                          : (most > stride ? move * (stride / most) : move).eval();
        for (std::size_t k = 0; k < walls; ++k)
            if (const auto row = static_cast<Eigen::Index>(k); capacity(row) < 1e29)
                state[k] += mixed(row) * capacity(row);
        push = balance.rates_at_flow(time, state, inlet_flow, change);
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

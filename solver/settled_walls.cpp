#include "solver/settled_walls.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <vector>

namespace drawwell {
namespace {

constexpr double first_step = 200, last_step = 1e8;  // [s]
constexpr double growth = 30;                        // [-] of the step
constexpr double stride = 250;                       // [K] most that a wall may move in one step
constexpr double at_rest = 0.2;                      // [K] of the next move
constexpr int most_iterations = 40;
constexpr int moves_an_aim = 4;         // mixing mends an old Jacobian as it does an incomplete one
constexpr double patient_step = 2000;   // [s]
constexpr int patient_steps = 90;       // two days
constexpr Eigen::Index remembered = 6;  // moves
constexpr int parts = 6;                // of the flow, for the sustained push

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

/// Walls on their way, the flow held.
class Settling {
  public:
    Settling(HeatBalance& balance, double time, double inlet_flow, std::span<double> state)
        : balance_(balance), time_(time), inlet_flow_(inlet_flow), state_(state) {
        look();
    }

    double push() const { return push_; }

    /// Takes the Jacobian where the walls are, for implicit steps [s] from now on.
    void aim(double step) {
        balance_.linearise();
        balance_.factor(step);
    }
    /// Where an implicit step would move every wall [K].
    Eigen::VectorXd move() {
        const std::size_t walls = balance_.network().solids.size();
        std::fill(rate_.begin() + static_cast<std::ptrdiff_t>(walls), rate_.end(), 0.0);
        balance_.solve(rate_);
        const auto known = static_cast<Eigen::Index>(walls);
        capacity_ = Eigen::Map<const Eigen::VectorXd>(balance_.heat_capacity().data(), known);
        return Eigen::Map<const Eigen::VectorXd>(rate_.data(), known).cwiseQuotient(capacity_);
    }

    void go(const Eigen::VectorXd& move) {
        const auto& solids = balance_.network().solids;
        for (std::size_t i = 0; i < solids.size(); ++i) {
            const auto wall = static_cast<Eigen::Index>(i);
            if (!solids[i].held) state_[i] += move(wall) * capacity_(wall);
        }
        look();
    }

  private:
    void look() {
        rate_.resize(state_.size());
        push_ = balance_.rates_at_flow(time_, state_, inlet_flow_, rate_);
    }

    HeatBalance& balance_;
    double time_, inlet_flow_;
    std::span<double> state_;
    std::vector<double> rate_;
    Eigen::VectorXd capacity_;
    double push_ = 0;
};

Eigen::VectorXd within_stride(const Eigen::VectorXd& move) {
    const double most = move.lpNorm<Eigen::Infinity>();
    return most > stride ? Eigen::VectorXd(move * (stride / most)) : move;
}

}  // namespace

double settle_walls(HeatBalance& balance, double time, double inlet_flow, std::span<double> state) {
    const std::vector<double> start(state.begin(), state.end());
    {
        Settling walls(balance, time, inlet_flow, state);
        for (double step = first_step; step < last_step; step *= growth) {
            walls.aim(step);
            walls.go(within_stride(walls.move()));
        }
        Mixer mixer;
        for (int i = 0; i < most_iterations; ++i) {
            if (i % moves_an_aim == 0) walls.aim(last_step);
            const Eigen::VectorXd move = walls.move();
            if (move.lpNorm<Eigen::Infinity>() < at_rest) return walls.push();
            walls.go(mixer.mix(move));
        }
    }
    // Where films turn about their walls' temperature no rest may be found so; time finds it, or
    // goes round it.
    std::copy(start.begin(), start.end(), state.begin());
    Settling walls(balance, time, inlet_flow, state);
    for (int i = 0; i < patient_steps; ++i) {
        walls.aim(patient_step);
        const Eigen::VectorXd move = walls.move();
        if (move.lpNorm<Eigen::Infinity>() < at_rest / 10) break;
        walls.go(within_stride(move));
    }
    return walls.push();
}

ReserveDraw sustained_push(HeatBalance& balance, double time, std::span<const double> state,
                           double most_flow, double expected) {
    if (!(most_flow > 0)) return {};
    const double part = most_flow / parts;
    const auto top_from = [&](int first) {
        std::vector<double> walls(state.begin(), state.end());
        ReserveDraw best;
        double before = 0, next = 0;  // [Pa] on either side of the best
        bool after_best = false;
        for (int i = first; i >= 1; --i) {
            const double flow = i * part;
            const double push = settle_walls(balance, time, flow, walls);
            if (i == first || push > best.pressure) {
                before = i == first ? push : best.pressure;
                best = {push, flow};
                after_best = false;
            } else if (!after_best) {
                next = push;
                after_best = true;
                if (first < parts) break;  // the top was expected here
            } else {
                break;  // two in a row below the top
            }
        }
        if (best.flow >= first * part || !after_best) return best;
        // The top of the parabola through the best and its neighbours.
        const double bend = before - 2 * best.pressure + next;
        if (!(bend < 0)) return best;
        const double shift = std::clamp(0.5 * (next - before) / bend, -1.0, 1.0);
        const double flow = best.flow + shift * part;
        const double push = settle_walls(balance, time, flow, walls);
        return push > best.pressure ? ReserveDraw{push, flow} : best;
    };
    const int above = static_cast<int>(std::lround(expected / part)) + 1;
    if (expected > 0 && above < parts)
        if (const ReserveDraw top = top_from(above); top.flow < above * part) return top;
    return top_from(parts);
}

}  // namespace drawwell

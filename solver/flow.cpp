#include "solver/flow.h"

#include <Eigen/Dense>
#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <optional>

#include "solver/curve_top.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

using RowMajor = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

constexpr double same_emission = 1e-7;     // [kg/s] where gas flows back from a fire
constexpr double settled_emission = 3e-7;  // [kg/s] along p_adv(x), worth a thousandth of a Pa
constexpr double nudge = 1e-6;             // [kg/s] for slopes by differences
constexpr double breath = 1e-4;            // [kg/s] of air, some litres a minute
constexpr double undecided = 1e-4;         // [Pa] less than the lightest draught
constexpr int most_steps = 14;             // of Broyden's method before walking
constexpr double good_step = 0.3;          // [-] of the imbalance left, with slopes worth keeping
constexpr double least_pace_step = 0.01;   // [s] shorter, and a pace is noise or a sudden change
constexpr int most_newton = 40;
constexpr int most_fruitless = 3;        // steps that lead no nearer, for where slopes vanish
constexpr double worth_locating = 1e-5;  // [kg/s] of a flow that turns, for the books
constexpr double largest_flow = 50;      // [kg/s] beyond any stove
constexpr double far_share = 0.25, far_flow = 3e-4;  // a jump: more than both, [-] and [kg/s]

double largest(std::span<const double> values) {
    double most = 0;
    for (const double value : values) most = std::max(most, std::abs(value));
    return most;
}

/// x of A x = b; nothing where A is singular.
template <class Matrix, class Vector>
std::optional<Eigen::VectorXd> solved(const Matrix& a, const Vector& b) {
    const Eigen::PartialPivLU<Eigen::MatrixXd> lu(a);
    if (!(lu.matrixLU().diagonal().cwiseAbs().minCoeff() > 1e-9)) return {};
    return Eigen::VectorXd(lu.solve(b));
}

}  // namespace

Flow::Flow(const Network& network, const Topology& topology)
    : topology_(topology), march_(network, topology) {
    committed_.inlet.resize(topology.loop_count);
    committed_.emission.resize(network.fire_sites.size());
    found_ = trial_ = pace_ = bend_ = committed_;
    slope_.resize(topology.loop_count * topology.loop_count);
    committed_slope_ = slope_;
    other_slope_.resize((topology.loop_count - 1) * (topology.loop_count - 1));
}

void Flow::begin_march(const Conditions& conditions, const State& state) {
    ++marches_;
    march_.begin(conditions, state.inlet, state.emission);
}

void Flow::imbalances(const Conditions& conditions, State& state, std::vector<double>& pressure) {
    begin_march(conditions, state);
    pressure.resize(topology_.loop_count);
    for (std::size_t k = topology_.loop_count; k-- > 0;) pressure[k] = march_.imbalance(k);
    march_.complete();
    for (std::size_t s = 0; s < state.emission.size(); ++s) state.emission[s] = march_.emitted(s);
}

void Flow::find_slopes(const Conditions& conditions, State at, const std::vector<double>& base) {
    std::vector<double> shifted;
    const std::size_t n = topology_.loop_count;
    for (std::size_t k = 0; k < n; ++k) {
        const double kept = at.inlet[k];
        const double step = std::max(nudge, 1e-4 * std::abs(kept));
        at.inlet[k] = kept + step;
        imbalances(conditions, at, shifted);
        for (std::size_t i = 0; i < n; ++i) slope_[i * n + k] = (shifted[i] - base[i]) / step;
        at.inlet[k] = kept;
    }
    slopes_known_ = true;
}

bool Flow::solve_near(const Conditions& conditions, double push) {
    const auto n = static_cast<Eigen::Index>(topology_.loop_count);
    // From what is committed, not from what some trial left behind: the answer depends on nothing
    // else.
    trial_ = expected(conditions.time);
    slope_ = committed_slope_;
    Eigen::Map<RowMajor> slope(slope_.data(), n, n);
    std::vector<double> pressure;
    Eigen::VectorXd now, before, step;
    bool fresh = false;
    const auto renew_slopes = [&] {
        find_slopes(conditions, trial_, pressure);
        committed_slope_ = slope_;
        fresh = true;
    };
    for (int i = 0; i < most_steps; ++i) {
        imbalances(conditions, trial_, pressure);
        now = Eigen::Map<const Eigen::VectorXd>(pressure.data(), n) -
              push * Eigen::Map<const Eigen::VectorXd>(topology_.gust_share.data(), n);
        const bool found =
            now.lpNorm<Eigen::Infinity>() < balanced_ && march_.unsettled() < same_emission;
        if (!slopes_known_) {
            renew_slopes();
            if (found) imbalances(conditions, trial_, pressure);
        }
        if (found) {
            // Stable where more flow is held back: the first inlet's slope, the others following.
            const auto rest = n - 1;
            double steepness = slope(0, 0);
            if (rest > 0) {
                const auto others =
                    solved(slope.block(1, 1, rest, rest), slope.block(1, 0, rest, 1));
                if (!others) return false;
                steepness -= (slope.block(0, 1, 1, rest) * *others)(0, 0);
            }
            found_ = trial_;
            return steepness < 0;
        }
        if (!fresh && i > 0 && now.norm() > good_step * before.norm())
            renew_slopes();
        else if (i > 0 && step.squaredNorm() > 0)
            slope += (now - before - slope * step) * step.transpose() / step.squaredNorm();
        const auto to_zero = solved(slope, now);
        if (!to_zero) return false;
        step = -*to_zero;
        before = now;
        const double limit = std::max(2 * far_share * largest(committed_.inlet), far_flow);
        if (const double size = step.lpNorm<Eigen::Infinity>(); size > limit) step *= limit / size;
        for (Eigen::Index k = 0; k < n; ++k) trial_.inlet[static_cast<std::size_t>(k)] += step(k);
    }
    return false;
}

void Flow::balance_others(const Conditions& conditions, State& state,
                          std::span<const double> share) {
    const std::size_t n = topology_.loop_count - 1;
    const auto rest = static_cast<Eigen::Index>(n);
    Eigen::VectorXd now(rest), shifted(rest);
    Eigen::Map<RowMajor> slope(other_slope_.data(), rest, rest);
    const auto pressures = [&](Eigen::VectorXd& out) {
        begin_march(conditions, state);
        for (std::size_t k = 0; k < n; ++k) {
            double& rest_of = out(static_cast<Eigen::Index>(k));
            rest_of = march_.imbalance(k + 1);
            if (share[k + 1] != 0) rest_of -= share[k + 1] / share[0] * march_.imbalance(0);
        }
    };
    const auto find_slopes_here = [&] {
        for (std::size_t k = 0; k < n; ++k) {
            const double kept = state.inlet[k + 1];
            const double step = std::max(nudge, 1e-4 * std::abs(kept));
            state.inlet[k + 1] = kept + step;
            pressures(shifted);
            slope.col(static_cast<Eigen::Index>(k)) = (shifted - now) / step;
            state.inlet[k + 1] = kept;
        }
    };
    pressures(now);
    int fruitless = 0;
    for (int i = 0; i < most_newton && n > 0 && now.lpNorm<Eigen::Infinity>() > balanced_ / 10;
         ++i) {
        // Slopes kept from another state are given one step each, which must go half the way.
        const bool fresh = !other_slopes_known_;
        if (fresh) find_slopes_here();
        const auto to_zero = solved(slope, now);
        const std::vector<double> from = state.inlet;
        Eigen::VectorXd step;
        bool nearer = false;
        for (int halving = 0; to_zero && !nearer && halving < (fresh ? 12 : 1); ++halving) {
            step = std::ldexp(-1.0, -halving) * *to_zero;
            for (std::size_t k = 0; k < n; ++k)
                state.inlet[k + 1] = from[k + 1] + step(static_cast<Eigen::Index>(k));
            pressures(shifted);
            nearer = shifted.norm() < (fresh ? 1 : 0.5) * now.norm();
        }
        other_slopes_known_ = nearer;
        if (nearer) {
            slope += (shifted - now - slope * step) * step.transpose() / step.squaredNorm();
        } else if (!fresh) {
            state.inlet = from;
            continue;
        } else if (!to_zero) {
            pressures(now);
            return;
        } else if (++fruitless > most_fruitless) {
            return;
        }
        now = shifted;
    }
}

double Flow::adverse_pressure(const Conditions& conditions, double inlet_flow) {
    return adverse_pressure(conditions, inlet_flow, topology_.gust_share);
}

double Flow::adverse_pressure(const Conditions& conditions, double inlet_flow,
                              std::span<const double> share) {
    trial_.inlet[0] = inlet_flow;
    double pressure = 0;
    for (int i = 0; i < 8; ++i) {
        balance_others(conditions, trial_, share);
        pressure = march_.imbalance(0) / share[0];
        march_.complete();
        for (std::size_t s = 0; s < trial_.emission.size(); ++s)
            trial_.emission[s] = march_.emitted(s);
        if (march_.unsettled() < settled_emission) break;
    }
    return pressure;
}

void Flow::solve_by_walking(const Conditions& conditions, double push) {
    trial_ = committed_;
    // Every flow is tried from what is committed, so that the other inlets stay on their branches
    // and p_adv(x) is one curve.
    const auto excess = [&](double x) {
        trial_ = committed_;
        return adverse_pressure(conditions, x) - push;
    };
    double near = committed_.inlet[0];
    double at_near = excess(near);
    double far = near, at_far = at_near;
    double step = std::max(0.02 * std::abs(near), 1e-5);
    const double direction = at_near > 0 ? 1.0 : -1.0;
    while (at_far != 0 && (at_far > 0) == (at_near > 0)) {
        near = far;
        at_near = at_far;
        far = near + direction * step;
        step *= 1.6;
        if (std::abs(far) > largest_flow)
            throw SolverError("no flow balances the draw of this stove");
        at_far = excess(far);
    }
    double root = far;
    if (at_far != 0 && far != near) {
        std::uintmax_t most = 60;
        const bool up = far > near;
        const auto bracket = boost::math::tools::toms748_solve(
            excess, up ? near : far, up ? far : near, up ? at_near : at_far, up ? at_far : at_near,
            [](double a, double b) { return std::abs(b - a) < 1e-9 + 1e-7 * std::abs(a); }, most);
        root = (bracket.first + bracket.second) / 2;
    }
    excess(root);
    found_ = trial_;
    std::vector<double> pressure;
    imbalances(conditions, found_, pressure);
    find_slopes(conditions, found_, pressure);
    imbalances(conditions, found_, pressure);
}

void Flow::solve(const Conditions& conditions, double push) {
    find(conditions, push);
    found_.time = conditions.time;
}

void Flow::find(const Conditions& conditions, double push) {
    // Still gas stands on a knife's edge; a breath towards the flue decides where nothing else
    // does.
    if (std::abs(committed_.inlet[0]) < breath) {
        const State still = committed_;
        trial_ = committed_;
        if (std::abs(adverse_pressure(conditions, still.inlet[0]) - push) < undecided)
            committed_.inlet[0] = breath;
        solve_by_walking(conditions, push);
        committed_ = still;
        return;
    }
    if (!solve_near(conditions, push)) solve_by_walking(conditions, push);
}

bool Flow::jumped() const {
    const double move = std::abs(found_.inlet[0] - committed_.inlet[0]);
    return move > far_flow && move > far_share * std::abs(committed_.inlet[0]);
}

bool Flow::turned() const {
    double before = 0, after = 0;  // what leaves
    const auto crossed = [](double a, double b) {
        return (a > 0) != (b > 0) && std::max(std::abs(a), std::abs(b)) > worth_locating;
    };
    for (std::size_t k = 0; k < found_.inlet.size(); ++k) {
        before += committed_.inlet[k];
        after += found_.inlet[k];
        if (crossed(committed_.inlet[k], found_.inlet[k])) return true;
    }
    for (std::size_t s = 0; s < found_.emission.size(); ++s) {
        before += committed_.emission[s];
        after += found_.emission[s];
    }
    return crossed(before, after);
}

Flow::State Flow::expected(double time) const {
    State state = committed_;
    const double ahead = time - committed_.time, bent = ahead * (time - pace_.time);
    for (std::size_t k = 0; k < state.inlet.size(); ++k)
        state.inlet[k] += ahead * pace_.inlet[k] + bent * bend_.inlet[k];
    for (std::size_t s = 0; s < state.emission.size(); ++s)
        state.emission[s] += ahead * pace_.emission[s] + bent * bend_.emission[s];
    return state;
}

void Flow::commit() {
    const double step = found_.time - committed_.time;
    const double two_steps = found_.time - pace_.time;
    const bool smooth = step > least_pace_step && !jumped();
    const auto carry_on = [&](const std::vector<double>& now, const std::vector<double>& before,
                              std::vector<double>& pace, std::vector<double>& bend) {
        for (std::size_t k = 0; k < now.size(); ++k) {
            const double new_pace = smooth ? (now[k] - before[k]) / step : 0;
            bend[k] = smooth && pace_known_ ? (new_pace - pace[k]) / two_steps : 0;
            pace[k] = new_pace;
        }
    };
    carry_on(found_.inlet, committed_.inlet, pace_.inlet, bend_.inlet);
    carry_on(found_.emission, committed_.emission, pace_.emission, bend_.emission);
    pace_known_ = smooth;
    pace_.time = committed_.time;
    committed_ = found_;
    committed_slope_ = slope_;
}

void Flow::begin_from(std::span<const double> inlet) {
    committed_.inlet.assign(inlet.begin(), inlet.end());
    found_ = trial_ = committed_;
    slopes_known_ = false;
}

bool Flow::overturn(const Conditions& conditions, double forward) {
    if (!(committed_.inlet[0] < 0 && forward > 0)) return false;
    trial_ = committed_;
    if (!(adverse_pressure(conditions, forward) > 0)) return false;
    committed_ = trial_;
    committed_.time = conditions.time;
    for (State* state : {&pace_, &bend_}) {
        state->inlet.assign(state->inlet.size(), 0.0);
        state->emission.assign(state->emission.size(), 0.0);
    }
    pace_known_ = false;
    slopes_known_ = false;
    return true;
}

ReserveDraw Flow::reserve(const Conditions& conditions) {
    return reserve(conditions, topology_.gust_share);
}

ReserveDraw Flow::reserve(const Conditions& conditions, std::span<const double> share) {
    const double present = found_.inlet[0];
    if (!(present > 0)) return {0, present};
    trial_ = found_;
    const CurvePoint top =
        curve_top([&](double flow) { return adverse_pressure(conditions, flow, share); },
                  {present, 0}, top_share_ * present);
    top_share_ = top.x / present;
    return {top.y, top.x};
}

}  // namespace drawwell

#include "solver/rosenbrock.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <string>

#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double after_branch = 0.1;  // [s] step to begin another branch with
constexpr int stages = 4;
using Square = Eigen::Matrix<double, stages, stages>;
using Row = Eigen::Matrix<double, 1, stages>;

constexpr double gamma_value = 4.3586652150845900e-01;
constexpr double least_step = 1e-7;  // [s]
constexpr double safety = 0.9;

/// The method in the form that needs no product with the Jacobian.
struct Method {
    Square a, c;
    Row weight, error;
    Row time;  // of each stage, as a share of the step
};

Method make_method() {
    Square alpha = Square::Zero(), gamma = gamma_value * Square::Identity();
    alpha(1, 0) = 8.7173304301691801e-01;
    alpha(2, 0) = 8.4457060015369423e-01;
    alpha(2, 1) = -1.1299064236484185e-01;
    alpha(3, 2) = 1.0;
    gamma(1, 0) = -8.7173304301691801e-01;
    gamma(2, 0) = -9.0338057013044082e-01;
    gamma(2, 1) = 5.4180672388095326e-02;
    gamma(3, 0) = 2.4212380706095346e-01;
    gamma(3, 1) = -1.2232505839045147e+00;
    gamma(3, 2) = 5.4526025533510214e-01;
    Row b, embedded;
    b << 2.4212380706095346e-01, -1.2232505839045147e+00, 1.5452602553351021e+00, gamma_value;
    embedded << 3.7810903145819369e-01, -9.6042292212423178e-02, 5.0000000000000000e-01,
        2.1793326075422950e-01;
    const Square inverse = gamma.inverse();
    Method method;
    method.a = alpha * inverse;
    method.c = Square::Identity() / gamma_value - inverse;
    method.weight = b * inverse;
    method.error = (b - embedded) * inverse;
    method.time = alpha.rowwise().sum().transpose();
    return method;
}

const Method& method() {
    static const Method made = make_method();
    return made;
}

}  // namespace

Rosenbrock::Rosenbrock(double longest_step) : longest_step_(longest_step), stage_(stages) {}

void Rosenbrock::initialize(const state_type& state, double time, double step) {
    // A shortened last step goes on from where we are; only a new start forgets the slope.
    started_ = started_ && time == time_ && state == state_;
    state_ = state;
    time_ = time;
    step_ = step;
    if (started_) return;
    old_state_ = state_;
    old_time_ = time_;
    rate_.resize(state.size());
    for (auto& stage : stage_) stage.resize(state.size());
    trial_.resize(state.size());
    stage_state_.resize(state.size());
    error_.resize(state.size());
}

double Rosenbrock::attempt(const StiffSystem& system, double step) {
    const Method& m = method();
    system.factor(gamma_value * step);
    const std::size_t n = state_.size();
    for (int i = 0; i < stages; ++i) {
        auto& stage = stage_[static_cast<std::size_t>(i)];
        if (i == 0) {
            std::copy(rate_.begin(), rate_.end(), stage.begin());
        } else {
            stage_state_ = state_;
            for (int j = 0; j < i; ++j)
                if (const double a = m.a(i, j); a != 0)
                    for (std::size_t k = 0; k < n; ++k)
                        stage_state_[k] += a * stage_[static_cast<std::size_t>(j)][k];
            system.rates(time_ + m.time(i) * step, stage_state_, stage);
            for (int j = 0; j < i; ++j)
                for (std::size_t k = 0; k < n; ++k)
                    stage[k] += m.c(i, j) / step * stage_[static_cast<std::size_t>(j)][k];
        }
        system.solve(stage);
    }
    trial_ = state_;
    std::fill(error_.begin(), error_.end(), 0.0);
    for (int i = 0; i < stages; ++i)
        for (std::size_t k = 0; k < n; ++k) {
            trial_[k] += m.weight(i) * stage_[static_cast<std::size_t>(i)][k];
            error_[k] += m.error(i) * stage_[static_cast<std::size_t>(i)][k];
        }
    return system.error_size(trial_, error_);
}

void Rosenbrock::accept(const StiffSystem& system) {
    if (system.accepted(time_, state_)) {
        system.rates(time_, state_, rate_);
        step_ = std::min(step_, after_branch);
    }
    system.linearise();
}

std::pair<double, double> Rosenbrock::do_step(const StiffSystem& system) {
    if (!started_) {
        system.rates(time_, state_, rate_);
        accept(system);
        started_ = true;
    }
    double step = std::min(step_, longest_step_);
    std::vector<double> new_rate(state_.size());
    for (;;) {
        double size = 0;
        bool good = false;
        try {
            size = attempt(system, step);
            good = size <= 1;
            if (good) {
                system.rates(time_ + step, trial_, new_rate);
                good = system.may_accept(step);
                if (!good) size = 64;
            }
        } catch (const SolverError&) {
            size = 64;  // the trial led nowhere; come nearer
        }
        const double factor = std::isfinite(size)
                                  ? std::clamp(safety / std::cbrt(std::max(size, 1e-6)), 0.2, 3.0)
                                  : 0.2;
        if (good) {
            old_time_ = time_;
            old_state_ = state_;
            old_rate_ = rate_;
            time_ += step;
            state_ = trial_;
            rate_ = end_rate_ = new_rate;
            step_ = std::min(step * factor, longest_step_);
            ++steps_;
            accept(system);
            return {old_time_, time_};
        }
        ++rejected_;
        step *= std::min(factor, 0.5);
        if (step < least_step)
            throw SolverError("no step is short enough at " + std::to_string(time_) + " s");
    }
}

void Rosenbrock::calc_state(double time, state_type& state) const {
    const double step = time_ - old_time_;
    if (!(step > 0)) {
        state = state_;
        return;
    }
    const double s = (time - old_time_) / step;
    const double h00 = (1 + 2 * s) * (1 - s) * (1 - s), h10 = s * (1 - s) * (1 - s);
    const double h01 = s * s * (3 - 2 * s), h11 = s * s * (s - 1);
    state.resize(state_.size());
    for (std::size_t k = 0; k < state.size(); ++k)
        state[k] = h00 * old_state_[k] + h10 * step * old_rate_[k] + h01 * state_[k] +
                   h11 * step * end_rate_[k];
}

}  // namespace drawwell

#pragma once

#include <boost/numeric/odeint/stepper/stepper_categories.hpp>
#include <functional>
#include <span>
#include <utility>
#include <vector>

namespace drawwell {

/// What the stepper needs of a system dy/dt = f(t, y).
struct StiffSystem {
    using Vector = std::span<double>;
    using ConstVector = std::span<const double>;
    std::function<void(double, ConstVector, Vector)> rates;
    /// Takes an approximate Jacobian where `rates` was last called.
    std::function<void()> linearise;
    /// Prepares, and then solves in place, (1/(gamma h) - J) x = b.
    std::function<void(double gamma_step)> factor;
    std::function<void(Vector)> solve;
    /// Size of an error relative to the tolerance; a step with 1 or less is accepted.
    std::function<double(ConstVector state, ConstVector error)> error_size;
    /// Whether the end of a step may be taken though its `rates` were found far from its start's.
    std::function<bool(double step)> may_accept;
    /// A step ended here. Whether `rates` now gives others than before: the branch was left.
    std::function<bool(double time, ConstVector state)> accepted;
};

/// A four-stage Rosenbrock-W method of order 3 with an embedded order 2, L-stable.
///
/// "W" means that the order holds for any matrix in place of the Jacobian, so that ours may leave
/// out what is dear to differentiate. Coefficients: ROS34PW2, Rang and Angermann, BIT Numerical
/// Mathematics 45 (2005) 761 (from memory; the order is tested with exact, false and no Jacobian).
/// Meets odeint's dense-output stepper concept; between steps the state is a cubic in time.
class Rosenbrock {
  public:
    using state_type = std::vector<double>;
    using value_type = double;
    using deriv_type = std::vector<double>;
    using time_type = double;
    using stepper_category = boost::numeric::odeint::dense_output_stepper_tag;

    explicit Rosenbrock(double longest_step);

    void initialize(const state_type& state, double time, double step);
    /// Steps on until a step is accepted. SolverError: not even a tiny step will do.
    std::pair<double, double> do_step(const StiffSystem& system);
    /// State at a time within the last step.
    void calc_state(double time, state_type& state) const;
    const state_type& current_state() const { return state_; }
    double current_time() const { return time_; }
    double current_time_step() const { return step_; }

    std::size_t steps() const { return steps_; }
    std::size_t rejected() const { return rejected_; }

  private:
    double attempt(const StiffSystem& system, double step);
    /// Goes on from state and rate as they are, or from the rate of another branch.
    void accept(const StiffSystem& system);

    double longest_step_;
    double time_ = 0, step_ = 0, old_time_ = 0;
    state_type state_, old_state_, trial_, stage_state_, error_;
    state_type rate_, old_rate_, end_rate_;  // to go on with; of the last step's two ends
    std::vector<std::vector<double>> stage_;
    bool started_ = false;
    std::size_t steps_ = 0, rejected_ = 0;
};

}  // namespace drawwell

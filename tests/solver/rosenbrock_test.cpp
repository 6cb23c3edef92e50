#include "solver/rosenbrock.h"

#include <doctest/doctest.h>

#include <Eigen/Dense>
#include <cmath>

#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;
using Vector = std::vector<double>;

namespace {

/// A problem dy/dt = f(t, y) with what is passed off as its Jacobian.
struct Problem {
    std::function<void(double, std::span<const double>, std::span<double>)> f;
    std::function<Eigen::MatrixXd(double, std::span<const double>)> jacobian;
};

/// Runs steps of one length, whatever their error.
class FixedSteps {
  public:
    FixedSteps(Problem problem, const Vector& first, double step)
        : problem_(std::move(problem)), stepper(step) {
        system.rates = [this](double t, auto y, auto rate) {
            problem_.f(t, y, rate);
            time_ = t;
            state_.assign(y.begin(), y.end());
        };
        system.linearise = [this] { jacobian_ = problem_.jacobian(time_, state_); };
        system.factor = [this](double gamma_step) {
            const auto n = jacobian_.rows();
            lu_.compute(Eigen::MatrixXd::Identity(n, n) / gamma_step - jacobian_);
        };
        system.solve = [this](std::span<double> x) {
            Eigen::Map<Eigen::VectorXd> map(x.data(), static_cast<Eigen::Index>(x.size()));
            map = lu_.solve(map).eval();
        };
        system.error_size = [](auto, auto) { return 0.1; };
        system.may_accept = [](double) { return true; };
        system.accepted = [](double, auto) { return false; };
        stepper.initialize(first, 0, step);
    }
    FixedSteps(const FixedSteps&) = delete;
    FixedSteps& operator=(const FixedSteps&) = delete;

  private:
    Problem problem_;
    double time_ = 0;
    Vector state_;
    Eigen::MatrixXd jacobian_;
    Eigen::PartialPivLU<Eigen::MatrixXd> lu_;

  public:
    StiffSystem system;
    Rosenbrock stepper;
};

/// Prey and predators: nonlinear, not stiff, without explicit time.
Problem two_species(double share_of_jacobian, double falsehood) {
    return {.f =
                [](double, auto y, auto rate) {
                    rate[0] = y[0] * (1 - y[1]);
                    rate[1] = y[1] * (y[0] - 1);
                },
            .jacobian =
                [=](double, auto y) {
                    Eigen::MatrixXd j(2, 2);
                    j << 1 - y[1], -y[0], y[1], y[0] - 1;
                    Eigen::MatrixXd wrong(2, 2);
                    wrong << -1.3, 0.7, 0.4, -2.1;
                    return Eigen::MatrixXd(share_of_jacobian * j + falsehood * wrong);
                }};
}

/// y' = -2 t y^2, y(0) = 1: y = 1 / (1 + t^2).
Problem with_time(double share_of_jacobian) {
    return {.f = [](double t, auto y, auto rate) { rate[0] = -2 * t * y[0] * y[0]; },
            .jacobian =
                [=](double t, auto y) {
                    return Eigen::MatrixXd::Constant(1, 1, share_of_jacobian * -4 * t * y[0]);
                }};
}

Vector at_two(const Problem& problem, const Vector& first, int steps) {
    FixedSteps run(problem, first, 2.0 / steps);
    for (int i = 0; i < steps; ++i) run.stepper.do_step(run.system);
    return run.stepper.current_state();
}

/// Order at which the error at t = 2 falls between `steps` and twice as many.
double order(const Problem& problem, const Vector& first, const Vector& exact, int steps) {
    const auto error = [&](int n) {
        const Vector y = at_two(problem, first, n);
        double sum = 0;
        for (std::size_t i = 0; i < y.size(); ++i) sum += (y[i] - exact[i]) * (y[i] - exact[i]);
        return std::sqrt(sum);
    };
    return std::log2(error(steps) / error(2 * steps));
}

const Vector first_two{1.5, 0.6};

/// Reference of two_species: its error is below 1e-10, far from those compared.
Vector two_species_at_two() {
    return at_two(two_species(1, 0), first_two, 4096);
}

}  // namespace

TEST_SUITE("solver/rosenbrock") {
    // Observed orders come within 0.3 of the true one at these steps.
    TEST_CASE("the method is of order 3 with the exact Jacobian") {
        const double seen = order(two_species(1, 0), first_two, two_species_at_two(), 64);
        CHECK(seen > 2.7);
        CHECK(seen < 3.5);
    }

    TEST_CASE("the method is of order 3 without any Jacobian") {
        CHECK(order(two_species(0, 0), first_two, two_species_at_two(), 64) > 2.7);
    }

    TEST_CASE("the method is of order 3 with a false Jacobian") {
        CHECK(order(two_species(0, 1), first_two, two_species_at_two(), 128) > 2.7);
        CHECK(order(two_species(0.5, 0.3), first_two, two_species_at_two(), 128) > 2.7);
    }

    TEST_CASE("the method is of order 3 where time stands in the equation") {
        const Vector exact{1.0 / 5};
        CHECK(order(with_time(1), {1.0}, exact, 64) > 2.7);
        CHECK(order(with_time(0), {1.0}, exact, 64) > 2.7);
    }

    TEST_CASE("the error estimate is one order lower than the step itself") {
        // Local error of order 2: it falls by 8 with each halving.
        const auto estimate = [](double step) {
            FixedSteps run(two_species(1, 0), first_two, step);
            double size = 0;
            run.system.error_size = [&](auto, auto error) {
                size = std::hypot(error[0], error[1]);
                return 0.1;
            };
            run.stepper.do_step(run.system);
            return size;
        };
        const double seen = std::log2(estimate(0.02) / estimate(0.01));
        CHECK(seen > 2.7);
        CHECK(seen < 3.3);
    }

    TEST_CASE("between steps the state is as good as at them") {
        const auto worst = [](int steps) {
            FixedSteps run(with_time(1), {1.0}, 2.0 / steps);
            double error = 0;
            Vector y;
            for (int i = 0; i < steps; ++i) {
                const auto [from, to] = run.stepper.do_step(run.system);
                for (const double share : {0.0, 0.3, 0.5, 0.8, 1.0}) {
                    const double t = from + share * (to - from);
                    run.stepper.calc_state(t, y);
                    error = std::max(error, std::abs(y[0] - 1 / (1 + t * t)));
                }
            }
            return error;
        };
        CHECK(std::log2(worst(64) / worst(128)) > 2.7);
    }

    TEST_CASE("a stiff part dies in one step however long") {
        for (const double stiffness : {1e3, 1e6, 1e9}) {
            FixedSteps run(
                {.f = [=](double, auto y, auto rate) { rate[0] = -stiffness * y[0]; },
                 .jacobian = [=](double,
                                 auto) { return Eigen::MatrixXd::Constant(1, 1, -stiffness); }},
                {1.0}, 1.0);
            run.stepper.do_step(run.system);
            // L-stable: R(z) falls as 1/z; the constant of this method is below 10.
            CHECK(std::abs(run.stepper.current_state()[0]) < 10 / stiffness + 1e-7);
        }
    }

    TEST_CASE("stiffness does not shorten the steps of a slow solution") {
        constexpr double stiffness = 1e5, tolerance = 1e-4;
        FixedSteps run(
            {.f = [](double t, auto y,
                     auto rate) { rate[0] = -stiffness * (y[0] - std::cos(t)) - std::sin(t); },
             .jacobian = [](double, auto) { return Eigen::MatrixXd::Constant(1, 1, -stiffness); }},
            {1.0}, 0.5);
        run.system.error_size = [](auto, auto error) { return std::abs(error[0]) / tolerance; };
        while (run.stepper.current_time() < 10) run.stepper.do_step(run.system);
        // An explicit method is held below 2.8 / stiffness: 350 000 steps.
        CHECK(run.stepper.steps() < 200);
        CHECK(std::abs(run.stepper.current_state()[0] - std::cos(run.stepper.current_time())) <
              10 * tolerance);
    }

    TEST_CASE("a step that errs too much is tried again shorter") {
        FixedSteps run(two_species(1, 0), first_two, 1.0);
        double asked = 0;
        run.system.error_size = [&](auto, auto error) {
            asked = std::hypot(error[0], error[1]) / 1e-6;
            return asked;
        };
        const auto [from, to] = run.stepper.do_step(run.system);
        CHECK(run.stepper.rejected() > 0);
        CHECK(to - from < 1.0);
        CHECK(asked <= 1);
    }

    TEST_CASE("a step whose end may not be accepted is tried again shorter") {
        FixedSteps run(two_species(1, 0), first_two, 1.0);
        run.system.may_accept = [](double step) { return step < 0.2; };
        const auto [from, to] = run.stepper.do_step(run.system);
        CHECK(to - from < 0.2);
        CHECK(to - from > 0.01);
    }

    TEST_CASE("a trial that leads nowhere is tried again nearer, and the search ends at last") {
        FixedSteps run(two_species(1, 0), first_two, 1.0);
        const auto rates = run.system.rates;
        run.system.rates = [&](double t, auto y, auto rate) {
            if (t > 0.3) throw SolverError("no flow");
            rates(t, y, rate);
        };
        const auto [from, to] = run.stepper.do_step(run.system);
        CHECK(to - from <= 0.3);
        run.system.error_size = [](auto, auto) { return 2.0; };
        CHECK_THROWS_AS(run.stepper.do_step(run.system), SolverError);
    }

    TEST_CASE("each accepted step is announced once, at its end") {
        FixedSteps run(two_species(1, 0), first_two, 0.25);
        Vector times;
        run.system.accepted = [&](double t, auto) {
            times.push_back(t);
            return false;
        };
        for (int i = 0; i < 3; ++i) run.stepper.do_step(run.system);
        REQUIRE(times.size() == 4);  // the start, too
        for (std::size_t i = 0; i < 4; ++i)
            CHECK(times[i] == doctest::Approx(0.25 * static_cast<double>(i)));
    }

    TEST_CASE("rates that an accepted step leaves behind are taken anew from there on") {
        // y' is 1 until half a second has passed, and -1 from then on, whatever t and y are.
        double slope = 1;
        FixedSteps run({.f = [&](double, auto, auto rate) { rate[0] = slope; },
                        .jacobian = [](double, auto) { return Eigen::MatrixXd::Zero(1, 1); }},
                       {0.0}, 0.25);
        run.system.accepted = [&](double t, auto) {
            const bool leaves = slope > 0 && t > 0.49;
            if (leaves) slope = -1;
            return leaves;
        };
        Vector y;
        while (slope > 0) run.stepper.do_step(run.system);
        run.stepper.calc_state(0.4, y);  // the step that ended there went the old way
        CHECK(y[0] == doctest::Approx(0.4));
        const double turned = run.stepper.current_time();
        while (run.stepper.current_time() < 0.8) {
            const auto [from, to] = run.stepper.do_step(run.system);
            const double middle = (from + to) / 2;
            run.stepper.calc_state(middle, y);
            CHECK(y[0] == doctest::Approx(2 * turned - middle));
        }
        const double end = run.stepper.current_time();
        CHECK(run.stepper.current_state()[0] == doctest::Approx(2 * turned - end));
    }
}

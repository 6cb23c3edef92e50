#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "solver/rosenbrock.h"
#include "validation/bench.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

// A body that a wave of heat warms and that cools with the fourth power, dy/dt = f(t, y); its
// solution is chosen, what it takes to have it is in the wave.
double chosen(double t) {
    return 1.5 + std::sin(t);
}
double rate_of(double t, double y) {
    const double wanted = chosen(t);
    return std::cos(t) - (y * y * y * y - wanted * wanted * wanted * wanted);
}

enum class Jacobian { exact, half, none };

/// Error at t = 3 with steps of one length; 1/(gamma h) - J from a Jacobian that may be false.
double error_of_steps(double step, Jacobian kind) {
    double slope = 0, inverse = 0, state_now = chosen(0);
    const double share = kind == Jacobian::exact ? 1 : kind == Jacobian::half ? 0.5 : 0;
    const StiffSystem system{
        .rates =
            [&](double t, auto y, auto rate) {
                rate[0] = rate_of(t, y[0]);
                state_now = y[0];
            },
        .linearise = [&] { slope = -4 * share * state_now * state_now * state_now; },
        .factor = [&](double gamma_step) { inverse = 1 / (1 / gamma_step - slope); },
        .solve = [&](auto x) { x[0] *= inverse; },
        .error_size = [](auto, auto) { return 0.0; },  // every step is good
        .may_accept = [](double) { return true; },
        .accepted = [](double, auto) { return false; }};
    Rosenbrock stepper(step);
    const std::vector<double> first{chosen(0)};
    stepper.initialize(first, 0, step);
    while (stepper.current_time() < 3 - step / 2) stepper.do_step(system);
    return std::abs(stepper.current_state()[0] - chosen(stepper.current_time()));
}

/// Worst error [K] of a radiating body under step control, against the same at 1e-9.
std::array<double, 5> errors_of_tolerances() {
    const auto run = [](double tolerance) {
        Bench bench;
        const SolidId a = bench.add(2, 500, 50, 1000);
        const SolidId b = bench.add(8, 500, 50, 300);
        bench.network.links.push_back({.a = a, .b = b, .shape_a = 0.1, .shape_b = 0.1});
        bench.add_face(a, 0.2, [](double t) { return 4.5e-8 * (t * t * t * t - 8.1e9); });
        bench.add_face(b, 0.2, [](double t) { return 4.5e-8 * (t * t * t * t - 8.1e9); });
        return bench.run({300, 600, 900, 1200}, tolerance);
    };
    const auto truth = run(1e-9);
    std::array<double, 5> errors{};
    double tolerance = 1e-3;
    for (double& error : errors) {
        const auto seen = run(tolerance);
        for (std::size_t i = 0; i < seen.size(); ++i)
            for (std::size_t k = 0; k < 2; ++k)
                error = std::max(error, std::abs(seen[i][k] - truth[i][k]));
        fmt::print("solver/stepper_order  tolerance {:.0e}: at most {:.2e} K off\n", tolerance,
                   error);
        tolerance /= 10;
    }
    return errors;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("the stepper is of third order, whatever Jacobian it is given") {
        for (const auto& [name, kind] : {std::pair{"exact", Jacobian::exact},
                                         {"half", Jacobian::half},
                                         {"no", Jacobian::none}}) {
            const double coarse = error_of_steps(0.02, kind), fine = error_of_steps(0.01, kind);
            compare(
                {"solver/stepper_order",
                 fmt::format("{} Jacobian, order of steps 0.02 to 0.01, short of 3 by [-]", name),
                 3 - std::log2(coarse / fine), 0.2});
        }
    }

    TEST_CASE("a body's error follows the tolerance over four decades") {
        const auto errors = errors_of_tolerances();
        double least = 1e9;
        for (std::size_t i = 1; i < errors.size(); ++i)
            least = std::min(least, errors[i - 1] / errors[i]);
        compare(
            {"solver/stepper_order", "radiating pair, tolerance 1e-4, worst [K]", errors[1], 0.1});
        compare({"solver/stepper_order", "gain per decade of tolerance, least, as 1 over it [-]",
                 1 / least, 0.25});
    }
}

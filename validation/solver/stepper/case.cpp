#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <boost/numeric/odeint/integrate/integrate_adaptive.hpp>
#include <boost/numeric/odeint/stepper/generation.hpp>
#include <boost/numeric/odeint/stepper/runge_kutta_dopri5.hpp>
#include <chrono>
#include <cmath>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "cli/read/starting_stove.h"
#include "models/build_network.h"
#include "models/burn.h"
#include "solver/simulate.h"
#include "validation/compare.h"

using namespace drawwell;
namespace odeint = boost::numeric::odeint;

namespace {

/// The stove that `new` writes, burning its wood.
Stove stove(const Library& library) {
    Stove made = read_stove(starting_stove({}), "start.toml", {}, library);
    made.burn.reserve_every = 0;
    return made;
}

BurnOutcome burn(double tolerance) {
    const Library library = read_library();
    Stove made = stove(library);
    made.burn.tolerance = tolerance;
    return run_burn(made, library);
}

/// Largest difference [K] of any wall or gas temperature at any sample after the first minutes;
/// lighting itself is a matter of seconds.
double difference(const Results& a, const Results& b) {
    double worst = 0;
    for (const Column& column : a.columns) {
        if (column.unit != "K") continue;
        const Column& other = *b.find(column.name);
        for (std::size_t i = 20 * column.width; i < column.values.size(); ++i)
            worst = std::max(worst, std::abs(column.values[i] - other.values[i]));
    }
    return worst;
}

struct Cost {
    std::size_t steps = 0, rates = 0;
    double seconds = 0;
    std::vector<double> temperature;  // [K] of every solid at the end
};

/// The same stove over plain heat, so that both steppers see the same smooth right-hand side.
BuiltStove over_heat(const Library& library, double refine) {
    Stove made = stove(library);
    made.burn.refine = refine;
    made.loads.clear();
    made.kindling.reset();
    made.heat_source = Table(15e3);
    return build_network(made, library);
}

double now() {
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

Cost implicit(double end, double tolerance, double refine) {
    const Library library = read_library();
    const BuiltStove built = over_heat(library, refine);
    const Topology topology = find_topology(built.network);
    HeatBalance balance(built.network, topology);
    Audit audit(built.network);
    Simulation simulation;
    simulation.end = end;
    simulation.tolerance = tolerance;
    simulation.sample_every = end;
    Cost cost;
    simulation.sample = [&](double, auto, HeatBalance& at) {
        cost.temperature.assign(at.temperature().begin(), at.temperature().end());
        return true;
    };
    const double start = now();
    const Effort effort = simulate(simulation, balance, audit);
    cost.seconds = now() - start;
    cost.steps = effort.steps;
    cost.rates = effort.evaluations;
    return cost;
}

/// Dormand and Prince, as odeint has it, under the same relative tolerance of enthalpy.
Cost explicit_steps(double end, double tolerance, double refine) {
    const Library library = read_library();
    const BuiltStove built = over_heat(library, refine);
    const Topology topology = find_topology(built.network);
    HeatBalance balance(built.network, topology);
    std::vector<double> state = built.network.initial_state();
    Cost cost;
    const auto rates = [&](const std::vector<double>& y, std::vector<double>& rate, double t) {
        ++cost.rates;
        balance.rates(t, y, rate);
    };
    const auto observe = [&](const std::vector<double>&, double) { balance.flow().commit(); };
    const double start = now();
    cost.steps = odeint::integrate_adaptive(
        odeint::make_controlled(0.0, tolerance, odeint::runge_kutta_dopri5<std::vector<double>>()),
        rates, state, 0.0, end, 0.1, observe);
    cost.seconds = now() - start;
    cost.temperature.resize(built.network.solids.size());
    built.network.temperatures(state, cost.temperature);
    return cost;
}

double worst(const Cost& a, const Cost& b) {
    double most = 0;
    for (std::size_t i = 0; i < a.temperature.size(); ++i)
        most = std::max(most, std::abs(a.temperature[i] - b.temperature[i]));
    return most;
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("a burn comes nearer to the truth with its tolerance at a known price") {
        const BurnOutcome exact = burn(1e-6);
        double before = 1e9, at_default = 0;
        for (const double tolerance : {1e-3, 1e-4, 1e-5}) {
            const BurnOutcome seen = burn(tolerance);
            const double off = difference(seen.results, exact.results);
            fmt::print(
                "solver/stepper  tolerance {:.0e}: {} steps, {} right-hand sides, {:.2f} s, at "
                "most {:.2f} K off\n",
                tolerance, seen.summary.steps, seen.summary.rhs_evaluations,
                seen.summary.wall_clock, off);
            CHECK(off < before);
            before = off;
            if (tolerance == 1e-4) at_default = off;
        }
        compare({"solver/stepper", "default tolerance, worst temperature after ten minutes [K]",
                 at_default, 3});
    }

    TEST_CASE("explicit steps cost many times more where walls are cut fine") {
        constexpr double end = 3600;  // [s]
        double ratio = 0;
        for (const double refine : {1.0, 3.0}) {
            const Cost truth = implicit(end, 1e-6, refine);
            const Cost ours = implicit(end, 2e-4, refine),
                       theirs = explicit_steps(end, 2e-4, refine);
            for (const auto& [name, cost] : {std::pair{"ours", &ours}, {"dopri5", &theirs}})
                fmt::print(
                    "solver/stepper  {}, cells times {:.0f}: {} steps, {} right-hand sides, {:.3f} "
                    "s, {:.3f} K off\n",
                    name, refine, cost->steps, cost->rates, cost->seconds, worst(*cost, truth));
            ratio = static_cast<double>(ours.rates) / static_cast<double>(theirs.rates);
        }
        compare({"solver/stepper", "right-hand sides over an explicit method's, fine cells [-]",
                 ratio, 0.2});
    }
}

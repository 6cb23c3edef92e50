#include "solver/simulate.h"

#include <algorithm>
#include <boost/numeric/odeint/integrate/integrate_times.hpp>
#include <boost/ref.hpp>
#include <cmath>
#include <utility>

#include "solver/instants.h"
#include "solver/rosenbrock.h"

namespace drawwell {
namespace {

constexpr double longest_step = 900;  // [s]
constexpr double first_step = 0.2;    // [s] after a stop
constexpr double branch_step = 0.05;  // [s] to which a change of branch is located
constexpr double turn_step = 3;       // [s] to which a change of a flow's direction is
constexpr double least_scale_of_fuel = 1e-9;
// [Pa] of imbalance for a tolerance: where a stove draws 5 Pa, half of it in flow, since losses
// grow as its square.
constexpr double balanced_per_tolerance = 5, best_balanced = 1e-7;

struct Stopped {};

constexpr double as_cold = 200;  // [K] below any wall: heat counts by what it is over the cold

/// Error of a step as a root mean square: temperatures against what they are over the cold, fuel
/// against its scale.
double error_size(const Network& network, double tolerance, std::span<const double> state,
                  std::span<const double> error) {
    const std::size_t n = network.solids.size();
    double sum = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const Solid& solid = network.solids[i];
        if (solid.held) continue;
        const double temperature = solid.curve->temperature(state[i] / solid.mass);
        const double size = error[i] / (solid.mass * solid.curve->heat_capacity(temperature)) /
                            (tolerance * (temperature - as_cold));
        sum += size * size;
    }
    for (std::size_t i = n; i < state.size(); ++i) {
        const double scale =
            std::max(network.fire->state_scale()[i - n], least_scale_of_fuel) * tolerance * 2;
        sum += error[i] / scale * (error[i] / scale);
    }
    return std::sqrt(sum / static_cast<double>(state.size()));
}

/// Where cold gas falls too slowly onto hot, the flow turns by itself; a new stretch begins.
bool overturned(double time, std::span<const double> state, HeatBalance& balance, Audit& audit) {
    const Network& network = balance.network();
    if (!network.overturning) return false;
    const double forward = network.overturning(balance.flow().march());
    if (!balance.flow().overturn(balance.conditions(time, state), forward)) return false;
    audit.close(state);
    std::vector<double> rate(state.size());
    balance.rates(time, state, rate);
    balance.flow().commit();
    audit.open(time, state, balance);
    return true;
}

/// `until`: the end of the stretch. What changes at once then is not yet seen at it.
StiffSystem make_system(const Simulation& simulation, HeatBalance& balance, Audit& audit,
                        bool& fresh, const double& until) {
    return {
        .rates =
            [&](double time, auto state, auto rate) {
                balance.rates(std::min(time, std::nextafter(until, 0.0)), state, rate);
            },
        .linearise = [&] { balance.linearise(); },
        .factor = [&](double gamma_step) { balance.factor(gamma_step); },
        .solve = [&](auto x) { balance.solve(x); },
        .error_size =
            [&](auto state, auto error) {
                return error_size(balance.network(), simulation.tolerance, state, error);
            },
        .may_accept =
            [&](double step) {
                const Flow& flow = balance.flow();
                return step <= branch_step ||
                       (!flow.jumped() && (step <= turn_step || !flow.turned()));
            },
        .accepted =
            [&](double time, auto state) {
                balance.flow().commit();
                if (fresh)
                    audit.open(time, state, balance);
                else
                    audit.step(time, balance);
                fresh = false;
                const bool turned = overturned(time, state, balance, audit);
                if (simulation.stepped) simulation.stepped(time, balance.flow());
                return turned;
            },
    };
}

/// Sample times of a stretch, its two ends included.
std::vector<double> times_between(double from, double to, double every) {
    std::vector<double> times{from};
    for (double i = std::floor((from + same_instant) / every) + 1; i * every < to - same_instant;
         ++i)
        times.push_back(i * every);
    times.push_back(to);
    return times;
}

}  // namespace

Effort simulate(const Simulation& simulation, HeatBalance& balance, Audit& audit) {
    balance.flow().balance_within(
        std::max(balanced_per_tolerance * simulation.tolerance, best_balanced));
    std::vector<double> state = balance.network().initial_state();
    std::vector<double> rate(state.size());
    const double last_stop = simulation.end - same_instant;
    std::vector<double> stops{0.0};
    for (const double stop : simulation.stops)
        if (stop > 0 && stop < last_stop) stops.push_back(stop);
    stops = distinct_instants(std::move(stops));
    stops.push_back(simulation.end);

    Effort effort;
    bool fresh = true;
    double until = 0;
    const StiffSystem system = make_system(simulation, balance, audit, fresh, until);
    const auto is_sample = [&](double time) {
        return std::abs(std::remainder(time, simulation.sample_every)) <= same_instant ||
               time == simulation.end;
    };
    for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
        if (simulation.at_stop) {
            const double again = simulation.at_stop(stops[i], state);
            const auto place = std::lower_bound(stops.begin(), stops.end(), again - same_instant);
            if (again > stops[i] && again<last_stop&& * place - again> same_instant)
                stops.insert(place, again);
        }
        fresh = true;
        until = stops[i + 1];
        const auto times = times_between(stops[i], stops[i + 1], simulation.sample_every);
        Rosenbrock stepper(longest_step);
        double seen = -1;
        const auto observe = [&](const std::vector<double>& at, double time) {
            if (time == seen || !is_sample(time) || (time == stops[i + 1] && i + 2 < stops.size()))
                return;  // the start of the next stretch shows the state after the stop
            seen = time;
            balance.rates(std::min(time, std::nextafter(until, 0.0)), at, rate);
            if (!simulation.sample(time, at, balance)) throw Stopped{};
        };
        try {
            boost::numeric::odeint::integrate_times(boost::ref(stepper), system, state,
                                                    times.begin(), times.end(), first_step,
                                                    observe);
        } catch (const Stopped&) {
            audit.close(stepper.current_state());
            effort.evaluations = balance.evaluations();
            return effort;
        }
        state = stepper.current_state();
        audit.close(state);
        effort.steps += stepper.steps();
        effort.rejected += stepper.rejected();
    }
    effort.evaluations = balance.evaluations();
    effort.marches = balance.flow().marches();
    effort.complete = true;
    return effort;
}

}  // namespace drawwell

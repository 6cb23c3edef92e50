#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/embedded_data.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/build_network.h"
#include "solver/constants.h"
#include "solver/simulate.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr double duration = 3600;  // [s]

/// The sample stove over steady plain heat in place of its wood.
BuiltStove sample() {
    const Library library = read_library();
    Stove stove = read_stove(embedded_data("stoves/allotment-kitchen.toml"), "sample", {}, library);
    stove.loads.clear();
    stove.kindling.reset();
    stove.heat_source = Table(8e3);
    return build_network(stove, library);
}

/// The temperature [K] that a solid is to have, and its rate of change [K/s]. All begin warm enough
/// for a forward draw and swell and sink, each with its own size and delay.
struct Chosen {
    double temperature = 0, rate = 0;
};
Chosen chosen(std::size_t solid, double time) {
    const double mean = 420 + 30 * std::sin(0.7 * static_cast<double>(solid));
    const double size = 60 + 40 * std::cos(1.3 * static_cast<double>(solid));
    const double speed = 2 * constants::pi / duration;
    const double phase = speed * time + 0.4 * std::sin(2.1 * static_cast<double>(solid));
    return {mean + size * std::sin(phase), size * speed * std::cos(phase)};
}

/// The stove without any manufactured heat, asked what heat its solids get at a state.
class RightHandSide {
  public:
    RightHandSide()
        : built_(sample()),
          topology_(find_topology(built_.network)),
          balance_(built_.network, topology_),
          state_(built_.network.initial_state()),
          rate_(state_.size()) {}

    /// Heat [W] that must be put into each solid so that it does as it was chosen to.
    void needed(double time, std::span<double> heat) {
        const auto& solids = built_.network.solids;
        for (std::size_t i = 0; i < solids.size(); ++i)
            state_[i] = solids[i].mass * solids[i].curve->enthalpy(chosen(i, time).temperature);
        balance_.rates(time, state_, rate_);
        balance_.flow().commit();
        least_flow = std::min(least_flow, balance_.flow().inlet_flow());
        for (std::size_t i = 0; i < solids.size(); ++i) {
            const Chosen at = chosen(i, time);
            heat[i] = solids[i].mass * solids[i].curve->heat_capacity(at.temperature) * at.rate -
                      rate_[i];
        }
    }

    double least_flow = 1;  // [kg/s] seen by the first inlet

  private:
    BuiltStove built_;
    Topology topology_;
    HeatBalance balance_;
    std::vector<double> state_, rate_;
};

struct Run {
    double worst = 0, least_flow = 0;  // [K], [kg/s]
    std::size_t steps = 0;
};

Run run(double tolerance) {
    RightHandSide plain;
    BuiltStove built = sample();
    for (std::size_t i = 0; i < built.network.solids.size(); ++i)
        built.network.solids[i].initial_temperature = chosen(i, 0).temperature;
    built.network.extra_heat = [&](double time, std::span<double> heat) {
        plain.needed(time, heat);
    };
    const Topology topology = find_topology(built.network);
    HeatBalance balance(built.network, topology);
    Audit audit(built.network);
    Run out;
    Simulation simulation;
    simulation.end = duration;
    simulation.tolerance = tolerance;
    simulation.sample_every = 60;
    simulation.sample = [&](double time, auto, HeatBalance& at) {
        for (std::size_t i = 0; i < at.temperature().size(); ++i)
            out.worst =
                std::max(out.worst, std::abs(at.temperature()[i] - chosen(i, time).temperature));
        return true;
    };
    out.steps = simulate(simulation, balance, audit).steps;
    out.least_flow = plain.least_flow;
    fmt::print("solver/manufactured_stove  tolerance {:.0e}: {} steps, at most {:.2e} K off\n",
               tolerance, out.steps, out.worst);
    return out;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a whole stove follows temperatures made up for it, closer with its tolerance") {
        const Run coarse = run(1e-3), usual = run(2e-4), fine = run(1e-5), finest = run(1e-6);
        REQUIRE(finest.least_flow > 0);  // it drew forward all the time
        compare({"solver/manufactured_stove", "default tolerance, worst of all solids [K]",
                 usual.worst, 1});
        compare({"solver/manufactured_stove", "tolerance 1e-6, worst of all solids [K]",
                 finest.worst, 0.02});
        compare({"solver/manufactured_stove", "default over 1e-3, worst [-]",
                 usual.worst / coarse.worst, 1});
        compare({"solver/manufactured_stove", "1e-5 over default, worst [-]",
                 fine.worst / usual.worst, 0.3});
        compare({"solver/manufactured_stove", "1e-6 over 1e-5, worst [-]",
                 finest.worst / fine.worst, 0.5});
    }
}

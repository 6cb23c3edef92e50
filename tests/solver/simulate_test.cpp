#include "solver/simulate.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "tests/near.h"
#include "tests/solver/small_network.h"

using namespace drawwell;
using Vector = std::vector<double>;

namespace {

/// A run with its parts, and what it showed.
struct Burn {
    explicit Burn(Network made)
        : network(std::move(made)),
          topology(find_topology(network)),
          balance(network, topology),
          audit(network) {
        simulation.end = 600;
        simulation.sample_every = 60;
        simulation.sample = [this](double time, auto state, HeatBalance&) {
            times.push_back(time);
            states.emplace_back(state.begin(), state.end());
            return true;
        };
    }
    Effort run() { return simulate(simulation, balance, audit); }

    Network network;
    Topology topology;
    HeatBalance balance;
    Audit audit;
    Simulation simulation;
    Vector times;
    std::vector<Vector> states;
};

/// One lump that takes the heat it is given, in a draft that does not touch it.
Network heated_lump(std::function<double(double)> heat) {
    Network network = single_curve([](double x) { return 1 - 1e4 * x * std::abs(x); });
    network.extra_heat = [heat](double t, std::span<double> all) { all[0] += heat(t); };
    return network;
}

/// A duct along a wall, with a fan whose push is a setting.
struct Fan final : PassageLaw {
    Fan(double square, std::function<double(double)> curve)
        : duct({.square = square,
                .wall = {0},
                .conductance = 40,
                .unpaid = 0,
                .gain = std::move(curve)}) {}
    std::size_t cell_count() const override { return 1; }
    const std::vector<Touch>& touches() const override { return duct.touches(); }
    Crossing cross(const PassageInput& input, PassageRecord record) const override {
        Crossing crossing = duct.cross(input, record);
        crossing.buoyancy += input.settings[0];
        return crossing;
    }
    DuctLaw duct;
};

/// Room - fan - outdoors past a wall that is heated with 400 W. `settings[0]`: the fan's push [Pa].
Network fanned(double square, std::function<double(double)> curve = {}) {
    Network network;
    add_solid(network, "wall", 2, 400);
    const JunctionId room = add_boundary(network, "room");
    const JunctionId outdoors = add_boundary(network, "outdoors");
    add_passage(network, "fan", room, outdoors, {}, true);
    network.passages[0].law = std::make_unique<Fan>(square, std::move(curve));
    network.settings = {0};
    network.extra_heat = [](double, std::span<double> heat) { heat[0] += 400; };
    return finish(std::move(network));
}

/// Flow [kg/s] at each sample of a burn.
Vector flows_of(Burn& burn) {
    Vector flows;
    burn.simulation.sample = [&](double time, auto, HeatBalance& at) {
        burn.times.push_back(time);
        flows.push_back(at.flow().inlet_flow());
        return true;
    };
    CHECK(burn.run().complete);
    return flows;
}

}  // namespace

TEST_SUITE("solver/simulate") {
    TEST_CASE("samples are taken from the start to the end, at each multiple") {
        Burn burn(small_stove());
        burn.simulation.end = 250;
        const Effort effort = burn.run();
        CHECK(effort.complete);
        CHECK(effort.steps > 0);
        REQUIRE(burn.times.size() == 6);
        for (std::size_t i = 0; i < 5; ++i)
            CHECK(burn.times[i] == doctest::Approx(60.0 * static_cast<double>(i)));
        CHECK(burn.times[5] == 250);
    }

    TEST_CASE("the flow is seen at the start and at the end of each step") {
        Burn burn(small_stove());
        Vector seen;
        burn.simulation.stepped = [&](double time, const Flow& flow) {
            CHECK(flow.inlet_flow() == flow.committed_flow());
            seen.push_back(time);
        };
        const Effort effort = burn.run();
        CHECK(seen.size() == effort.steps + 1);
        CHECK(seen.front() == 0);
        CHECK(seen.back() == 600);
        CHECK(std::is_sorted(seen.begin(), seen.end()));
    }

    TEST_CASE("halving the sample interval shows more of the same run") {
        Burn coarse(small_stove()), fine(small_stove());
        fine.simulation.sample_every = 30;
        const Effort few = coarse.run(), many = fine.run();
        CHECK(few.steps == many.steps);
        REQUIRE(fine.times.size() == 2 * coarse.times.size() - 1);
        for (std::size_t i = 0; i < coarse.times.size(); ++i)
            for (std::size_t k = 0; k < coarse.states[i].size(); ++k)
                CHECK(fine.states[2 * i][k] == near(coarse.states[i][k], 1e-6));
    }

    TEST_CASE("a halved tolerance comes nearer to the truth and takes more steps") {
        Burn exact(small_stove()), loose(small_stove()), tight(small_stove());
        exact.simulation.tolerance = 1e-7;
        loose.simulation.tolerance = 1e-3;
        tight.simulation.tolerance = 1e-5;
        exact.run();
        const Effort few = loose.run(), many = tight.run();
        const auto error = [&](const Burn& burn) {
            double worst = 0;
            for (std::size_t i = 0; i < burn.states.size(); ++i)
                for (std::size_t k = 0; k < 8; ++k)
                    worst = std::max(worst, std::abs(burn.states[i][k] / exact.states[i][k] - 1));
            return worst;
        };
        CHECK(many.steps > few.steps);
        CHECK(error(loose) < 3e-3);
        CHECK(error(tight) < 3e-5);
        CHECK(error(tight) < 0.2 * error(loose));
    }

    TEST_CASE("the integration lands on every stop inside the burn, in order and once") {
        Burn burn(small_stove());
        burn.simulation.stops = {400, 77.7, 400, 0, -3, 600, 900};
        Vector stops;
        burn.simulation.at_stop = [&](double time, auto) {
            stops.push_back(time);
            return 0.0;
        };
        CHECK(burn.run().complete);
        CHECK(stops == Vector{0, 77.7, 400});
    }

    TEST_CASE("a stop may ask for another later on") {
        Burn burn(small_stove());
        burn.simulation.stops = {100};
        Vector stops;
        burn.simulation.at_stop = [&](double time, auto) {
            stops.push_back(time);
            return time == 100 ? 160.5 : time == 160.5 ? 1e9 : 0.0;
        };
        burn.run();
        CHECK(stops == Vector{0, 100, 160.5});
    }

    TEST_CASE("heat that is switched at a stop is integrated exactly") {
        // 1 kW from 100.3 s to 245.1 s: no step may straddle the switch.
        Burn burn(heated_lump([](double t) { return t > 100.3 && t <= 245.1 ? 1e3 : 0.0; }));
        burn.simulation.stops = {100.3, 245.1};
        burn.run();
        const double gained = burn.states.back()[0] - burn.states.front()[0];
        CHECK(gained == near(1e3 * (245.1 - 100.3), 1e-3));  // the rate at a stop is the old one
    }

    TEST_CASE("what a stop changes shows in the sample at that time, and from there on") {
        Burn burn(heated_lump([](double) { return 0.0; }));
        burn.simulation.stops = {120};
        burn.simulation.at_stop = [](double time, std::span<double> state) {
            if (time == 120) state[0] += 500;
            return 0.0;
        };
        burn.run();
        const double first = burn.states[0][0];
        REQUIRE(burn.times.size() == 11);  // the stop is shown once
        for (std::size_t i = 0; i < burn.times.size(); ++i)
            CHECK(burn.states[i][0] - first == doctest::Approx(i < 2 ? 0 : 500));
    }

    TEST_CASE("a burn stops after the sample that says so, its books up to there") {
        Burn burn(small_stove());
        burn.simulation.sample = [&](double time, auto, HeatBalance&) {
            burn.times.push_back(time);
            return time < 180;
        };
        const Effort effort = burn.run();
        CHECK_FALSE(effort.complete);
        CHECK(burn.times == Vector{0, 60, 120, 180});
        // Two hundred seconds at tolerance 1e-4; a flux left out would show as more than 1e-2.
        CHECK(burn.audit.totals().fuel_used > 180 * 2e-4 * 2e7);
        CHECK(burn.audit.energy_residual(burn.audit.totals().fuel_used) < 1e-3);
    }

    TEST_CASE("a flow that leaves its branch does so between short steps") {
        // Two branches round +-10 g/s; a fan against the flow grows until the forward one ends.
        // The fan's push stands for the fuel left, which burns away at 0.01 per second.
        struct Fan final : PassageLaw {
            std::size_t cell_count() const override { return 1; }
            const std::vector<Touch>& touches() const override { return touches_; }
            Crossing cross(const PassageInput& input, PassageRecord record) const override {
                record.cells[0] = {};
                const double s = input.mass_flow / 0.01;
                Crossing crossing;
                crossing.outlet = input.gas;
                crossing.buoyancy = 10 * (s - s * s * s) - input.settings[0];
                return crossing;
            }
            std::vector<Touch> touches_;
        };
        struct Clock final : Fire {
            std::size_t state_count() const override { return 1; }
            std::span<const double> state_scale() const override { return scale_; }
            std::size_t site_count() const override { return 0; }
            void set(const View& view, std::span<double> settings) const override {
                settings[0] = view.fuel[0];
            }
            Emission emission(std::size_t, const View&, const Arriving&) const override {
                return {};
            }
            void rates(const View&, std::span<const Arriving>, std::span<const GasCell>,
                       std::span<double> rate, std::span<double>) const override {
                rate[0] = 0.01;
            }
            double enthalpy(std::span<const double>) const override { return 0; }
            std::array<double, 4> elements(std::span<const double>) const override { return {}; }
            void rate_slopes(const View&, std::span<const Arriving>,
                             std::span<double> slope) const override {
                slope[0] = 0;
            }
            std::array<double, 1> scale_{1};
        };
        Network network;
        add_solid(network, "wall", 1, 300);
        const JunctionId room = add_boundary(network, "room");
        const JunctionId outdoors = add_boundary(network, "outdoors");
        add_passage(network, "fan", room, outdoors, {}, true);
        network.passages[0].law = std::make_unique<Fan>();
        network.fire = std::make_unique<Clock>();
        network.settings = {0};
        network.initial_fuel = {-1};
        Burn burn(finish(std::move(network)));
        Vector flows;
        burn.simulation.end = 600;
        burn.simulation.sample = [&](double, auto, HeatBalance& at) {
            flows.push_back(at.flow().inlet_flow());
            return true;
        };
        const Effort effort = burn.run();
        // The branch ends where the push is 20/(3 sqrt 3) Pa: at 485 s.
        REQUIRE(flows.size() == 11);
        CHECK(flows[8] > 0.0057);
        CHECK(flows[9] < -0.01);
        CHECK(effort.rejected > 5);  // the steps that would have leapt over the end
    }

    TEST_CASE("a setting that steps at a stop is seen old before it and new from it on") {
        Network network = fanned(1e4);
        network.change = [](double time, Surroundings& around) {
            around.settings[0] = time < 240 ? 1 : 4;
        };
        Burn burn(std::move(network));
        burn.simulation.stops = {240};
        burn.simulation.tolerance = 1e-5;
        const Vector flows = flows_of(burn);
        // 1e4 x^2 is the fan's push.
        REQUIRE(flows.size() == 11);
        for (std::size_t i = 0; i < flows.size(); ++i)
            CHECK(flows[i] == near(burn.times[i] < 240 ? 0.01 : 0.02, 1e-5));
    }

    TEST_CASE("the books close over a setting that steps at a stop") {
        Network network = fanned(1e4);
        network.change = [](double time, Surroundings& around) {
            around.settings[0] = time < 240 ? 1 : 9;
        };
        Burn burn(std::move(network));
        burn.simulation.stops = {240};
        burn.simulation.tolerance = 1e-6;
        const Effort effort = burn.run();
        CHECK(burn.audit.energy_residual(burn.audit.totals().extra) < 1e-4);
        CHECK(effort.rejected < 5);  // no step runs into the change: it would be cut to nothing
        // The wall nears 300 K + 400 W / K, K = W (1 - exp(-40 / W)), first at 10 g/s, then at 30.
        const auto after = [](double from, double flow, double time) {
            const double stream = flow * gas_capacity;
            const double gas = stream * -std::expm1(-40 / stream);
            const double rest = air_temperature + 400 / gas;
            return rest + (from - rest) * std::exp(-gas * time / (2 * solid_capacity));
        };
        const double last = burn.states.back()[0] / (2 * solid_capacity);
        CHECK(last == near(after(after(400, 0.01, 240), 0.03, 360), 1e-5));
    }

    TEST_CASE("hot gas under cold turns the flow within a burn, and the books still close") {
        // Two branches round +-10 g/s; the hot gas is said to win from 150 s on.
        constexpr double when = 150, forward = 0.004;
        Network network = fanned(0, [](double x) {
            const double s = x / 0.01;
            return 10 * (s - s * s * s);
        });
        network.settings.push_back(0);
        network.change = [](double time, Surroundings& around) { around.settings[1] = time; };
        network.overturning = [](const March& march) {
            return march.surroundings().settings[1] >= when ? forward : 0.0;
        };
        Burn burn(std::move(network));
        burn.simulation.tolerance = 1e-6;
        burn.balance.flow().begin_from(Vector{-0.01});
        const Vector flows = flows_of(burn);
        REQUIRE(flows.size() == 11);
        // It turns at the end of the step that is under way then.
        for (std::size_t i = 0; i < flows.size(); ++i) {
            if (burn.times[i] <= when) CHECK(flows[i] == near(-0.01, 1e-5));
            if (burn.times[i] >= 2 * when) CHECK(flows[i] == near(0.01, 1e-5));
        }
        const Audit::Totals& books = burn.audit.totals();
        CHECK(burn.audit.energy_residual(books.extra) < 1e-4);
        CHECK(std::abs(burn.audit.mass_residual(0)) < 1e-9);
    }
}

#include "validation/simulators/right_hand_side/same_equations.h"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>
#include <vector>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/stove_run.h"
#include "validation/compare.h"
#include "validation/simulators/reference.h"
#include "validation/simulators/right_hand_side/shown.h"

namespace drawwell {
namespace {

/// What is left of the heat into all walls [-] where gas given off is settled to 1e-7 kg/s.
constexpr double same_heat = 5e-6;
constexpr double wanted = 1e-6;         // [-] of a quantity's span
constexpr double balanced_flow = 3e-5;  // [-] what 1e-4 Pa are worth beside some 2 Pa of a slot

/// How far drawwell's own stepper is from the other integrator.
struct Off {
    double wall = 0;    // [-] worst solid's temperature, of its span, at least a kelvin
    double common = 0;  // [-] the same, exceeded by one solid in twenty
    double fuel = 0;    // [-] worst state of the fuel, of its span, at least its scale
    double flow = 0;    // [-] worst flow by an inlet, of its span
    std::size_t steps = 0;
};

Stove read_sample(const std::string& sample, const Library& library) {
    std::ifstream file(DRAWWELL_SOURCES "/data/stoves/" + sample + ".toml");
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    return read_stove(text, sample, {}, library);
}

/// The share that the heat into walls is off, worst of all times, at the reference's states.
double changed(const Reference& reference, StoveRun& run) {
    const Network& network = run.built.network;
    const std::size_t solids = network.solids.size();
    double worst = 0;
    for (std::size_t t = 0; t < reference.at.size(); ++t) {
        std::vector<double> state(network.state_count()), rate(state.size()), inlet;
        for (std::size_t i = 0; i < state.size(); ++i) {
            state[i] = reference.values[i][t];
            if (i < solids)
                state[i] = network.solids[i].mass * network.solids[i].curve->enthalpy(state[i]);
        }
        for (std::size_t k = 0; k < run.topology.loop_count; ++k)
            inlet.push_back(reference.values[state.size() + k][t]);
        // What the fire gives off at these flows is found first, then the flows are kept.
        for (int i = 0; i < 3; ++i) {
            run.balance.flow().begin_from(inlet);
            run.balance.rates(std::nextafter(reference.at[t], 0.0), state, rate);
            run.balance.flow().commit();
        }
        double heat = 0;
        for (std::size_t i = 0; i < solids; ++i) heat += std::abs(rate[i]);
        worst = std::max(worst, std::abs(heat / reference.of("heat")[t] - 1));
    }
    return worst;
}

Off burn(const Stove& stove, const Reference& reference, const Library& library) {
    StoveRun run(stove, library);
    const Network& network = run.built.network;
    std::vector<double> off(reference.names.size());
    const std::vector<double> no_rate(network.state_count());
    std::size_t t = 0;
    Off all;
    const auto sample = [&](double, auto state, HeatBalance&) {
        const std::vector<double> own = shown(run, state, no_rate);
        for (std::size_t q = 0; q < own.size(); ++q)
            off[q] = std::max(off[q], std::abs(own[q] - reference.values[q][t]));
        ++t;
        return true;
    };
    all.steps = run.burn(reference.at.back(), reference.at.at(1), sample).steps;
    REQUIRE(t == reference.at.size());

    const std::size_t solids = network.solids.size(), states = network.state_count();
    std::vector<double> walls;
    for (std::size_t q = 0; q + 1 < off.size(); ++q) {
        const auto [low, high] = std::ranges::minmax(reference.values[q]);
        const bool wall = q < solids, fuel = !wall && q < states;
        const double least = wall ? 1 : fuel ? network.fire->state_scale()[q - solids] : 0;
        const double share = off[q] / std::max(high - low, least);
        if (wall) walls.push_back(share);
        double& worst = wall ? all.wall : fuel ? all.fuel : all.flow;
        worst = std::max(worst, share);
    }
    std::ranges::sort(walls);
    all.common = walls[walls.size() * 19 / 20];
    return all;
}

}  // namespace

void check_same_equations(const std::string& name, const std::string& sample, double limit) {
    const Reference reference = read_reference(name);
    const Library library = read_library();
    Stove stove = read_sample(sample, library);
    StoveRun run(stove, library);
    const double now = shown_names(run) == reference.names ? changed(reference, run) : 1;
    show({name, "heat into walls, changed since the reference was made [-]", now, same_heat},
         "the laws were changed: validation/run --renew --with-simulators");
    if (now > same_heat) {
        MESSAGE(name << ": the laws were changed; validation/run --with-simulators renews it");
        return;
    }
    const auto burn_at = [&](double tolerance) {
        stove.burn.tolerance = tolerance;
        const Off off = burn(stove, reference, library);
        fmt::print(
            "{}  tolerance {:.0e}, {} steps: walls {:.2e} at worst, {:.2e} but for one in twenty, "
            "fuel {:.2e}, flows {:.2e} of their spans\n",
            name, tolerance, off.steps, off.wall, off.common, off.fuel, off.flow);
        return off;
    };
    compare({name, "default tolerance, walls, worst of all, of its span [-]",
             burn_at(stove.burn.tolerance).wall, 5e-3});
    const Off off = burn_at(3e-10);
    if (limit > wanted)
        show({name, "walls, worst of all, beside what was asked for [-]", off.wall, wanted},
             "a change of branch is located to 0.05 s, and a slow draw balanced to 1e-4 Pa");
    compare({name, "walls, worst of all, of its span [-]", off.wall, limit});
    compare({name, "fuel, worst state, of its span [-]", off.fuel, limit});
    show({name, "flows by feed and slot, beside what was asked for [-]", off.flow, wanted},
         "f itself balances the draw to 1e-4 Pa only");
    compare({name, "flows by feed and slot, of their spans [-]", off.flow, balanced_flow});
}

}  // namespace drawwell

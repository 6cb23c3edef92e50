#include "validation/simulators/right_hand_side/right_hand_side.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <memory>
#include <string>
#include <vector>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/stops.h"
#include "models/stove_run.h"
#include "solver/errors.h"
#include "validation/simulators/right_hand_side/shown.h"

using namespace drawwell;

namespace {

constexpr double branch_step = 0.05, turn_step = 3;  // [s] as solver/simulate.cpp has them

std::string read_all(const char* name) {
    std::ifstream file(name);
    if (!file) throw InputError(std::string(name) + " cannot be read");
    return {std::istreambuf_iterator<char>(file), {}};
}

}  // namespace

struct DrawwellRun {
    DrawwellRun(const char* file, double end)
        : library(read_library()),
          stove(read_stove(read_all(file), file, {}, library)),
          run(stove, library),
          names(shown_names(run)),
          rate(run.built.network.state_count()) {
        for (const double stop : run.stops)
            if (stop > 0 && stop < end) stops.push_back(stop);
        stops.push_back(end);
        std::sort(stops.begin(), stops.end());
    }

    std::span<const double> view(const double* state) const { return {state, rate.size()}; }
    void rates(double time, const double* state, std::span<double> out) {
        run.balance.rates(std::min(time, std::nextafter(until, 0.0)), view(state), out);
    }

    Library library;
    Stove stove;
    StoveRun run;
    std::vector<std::string> names;
    std::vector<double> rate, stops;
    double until = 0;  // [s] the end of the stretch; what changes at once then is not yet seen
};

DrawwellRun* drawwell_open(const char* stove_file, double end) {
    try {
        return std::make_unique<DrawwellRun>(stove_file, end).release();
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
        return nullptr;
    }
}

void drawwell_close(DrawwellRun* run) {
    const std::unique_ptr<DrawwellRun> closed(run);
}

std::size_t drawwell_size(const DrawwellRun* run) {
    return run->rate.size();
}

const char* drawwell_name(const DrawwellRun* run, std::size_t quantity) {
    return quantity < run->names.size() ? run->names[quantity].c_str() : nullptr;
}

void drawwell_initial(const DrawwellRun* run, double* state) {
    std::ranges::copy(run->run.built.network.initial_state(), state);
}

void drawwell_unit(const DrawwellRun* run, double* unit) {
    const Network& network = run->run.built.network;
    for (const Solid& solid : network.solids)
        *unit++ = solid.mass * solid.curve->heat_capacity(solid.initial_temperature);
    if (network.fire) std::ranges::copy(network.fire->state_scale(), unit);
}

double drawwell_begin(DrawwellRun* run, double time, double* state) {
    auto& stops = run->stops;
    if (run->run.built.bed) {
        const std::size_t solids = run->run.built.network.solids.size();
        const double again =
            run->run.loading.at_stop(time, {state + solids, run->rate.size() - solids});
        const auto place = std::lower_bound(stops.begin(), stops.end(), again);
        if (again > time && again < stops.back() && *place != again) stops.insert(place, again);
    }
    run->until = *std::upper_bound(stops.begin(), stops.end(), time);
    if (drawwell_rates(run, time, state, run->rate.data()) != 0) return -1;
    drawwell_accepted(run, time, 0, state);
    return run->until;
}

int drawwell_rates(DrawwellRun* run, double time, const double* state, double* rate) {
    try {
        run->rates(time, state, {rate, run->rate.size()});
        return 0;
    } catch (const SolverError&) {
        return 1;
    }
}

std::size_t drawwell_evaluations(const DrawwellRun* run) {
    return run->run.balance.evaluations();
}

void drawwell_balance_within(DrawwellRun* run, double pressure) {
    run->run.balance.flow().balance_within(pressure);
}

DrawwellVerdict drawwell_accepted(DrawwellRun* run, double time, double step, const double* state) {
    if (drawwell_rates(run, time, state, run->rate.data()) != 0) return drawwell_too_long;
    Flow& flow = run->run.balance.flow();
    if (step > branch_step && (flow.jumped() || (step > turn_step && flow.turned())))
        return drawwell_too_long;
    flow.commit();
    const Network& network = run->run.built.network;
    if (!network.overturning) return drawwell_go_on;
    const double forward = network.overturning(flow.march());
    if (!flow.overturn(run->run.balance.conditions(time, run->view(state)), forward))
        return drawwell_go_on;
    run->rates(time, state, run->rate);
    flow.commit();
    return drawwell_begin_anew;
}

void drawwell_show(DrawwellRun* run, double time, const double* state, double* quantity) {
    run->rates(time, state, run->rate);
    std::ranges::copy(shown(run->run, run->view(state), run->rate), quantity);
}

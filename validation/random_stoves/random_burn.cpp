#include "validation/random_stoves/random_burn.h"

#include <fmt/format.h>

#include <atomic>
#include <ctime>
#include <exception>

#include "cli/read/read_stove.h"
#include "models/build_network.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double patience = 60;  // [s] of this thread's own time: what else runs does not count

double thread_seconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

void burn(const Stove& stove, const Library& library, RandomBurn& result) {
    BurnChecks checks(BurnChecks::bounds_of(stove, library));
    const double start = thread_seconds();
    std::atomic<bool> stop = false;
    double reached = 0;
    BurnWatch watch;
    watch.stop = &stop;
    watch.observe = [&](double time, std::span<const double> state, const HeatBalance& balance) {
        checks.see(instant_of(time, state, balance));
        reached = time;
        stop = thread_seconds() - start > patience;
    };
    const BurnOutcome outcome = run_burn(stove, library, watch);
    if (!outcome.complete) {
        result.reason = fmt::format("given up at {:.0f} s of the burn", reached);
        return;
    }
    checks.see(outcome);
    result.fate = RandomBurn::Fate::run;
    result.complaints = checks.complaints();
    result.worst = checks.worst();
    result.seconds = outcome.summary.wall_clock;
    result.steps = outcome.summary.steps;
}

}  // namespace

RandomBurn burn_random_stove(std::uint32_t index, const BurnLength& length,
                             const Library& library) {
    RandomBurn result;
    result.index = index;
    try {
        const Stove stove =
            read_stove(random_stove(stove_seed, index, length), "stove", {}, library);
        // What cannot be built is refused too; an InputError of the run itself is a failure.
        build_network(stove, library);
        try {
            burn(stove, library, result);
        } catch (const std::exception& error) {
            result.reason = error.what();
        }
    } catch (const InputError& error) {
        result.reason = error.what();
        if (!result.reason.empty()) result.fate = RandomBurn::Fate::refused;
    } catch (const std::exception& error) {
        result.reason = error.what();
    }
    return result;
}

}  // namespace drawwell

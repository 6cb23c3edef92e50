#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <string>

#include "cli/read/read_library.h"
#include "tests/cli/scratch_folder.h"
#include "tests/cli/study/fit/made_log.h"
#include "validation/compare.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

constexpr auto name = "fit/coverage";
constexpr int truths = 100;
constexpr double until = 900;  // [s]
// Of 100 intervals that each hold 95 times of 100, 90 to 99 do in 96 of 100 worlds.
constexpr double fewest = 90, most = 99;

struct Asked {
    std::vector<FitInput> inputs;  // fitted, without the clock
    FitInput clock = parse_clock_offset("3min+-1min");
};

Asked asked_of(const Study& study, const Library& library) {
    const Stove stove = stove_of(study, 0, library);
    Asked asked;
    for (const char* input : {"fuel_bed.surface_rate", "day.wood_moisture", "day.outdoor"})
        asked.inputs.push_back(parse_fit_input(input, stove, library));
    return asked;
}

/// How often the intervals hold, and how wide they are, by input.
struct Tally {
    std::vector<std::string> names;
    std::vector<int> held;
    Numbers left;  // summed
    int computed = 0, misfits = 0;

    void take(const Match& match, const Numbers& deviations) {
        held.resize(match.inputs.size());
        left.resize(match.inputs.size());
        names.clear();
        for (std::size_t k = 0; k < match.inputs.size(); ++k) {
            const MatchedInput& each = match.inputs[k];
            names.push_back(each.input.name);
            left[k] += each.deviation;
            held[k] += std::abs(each.estimate - deviations[k]) <= half_interval * each.deviation;
        }
        ++computed;
        for (const MatchedSensor& sensor : match.sensors)
            if (sensor.counted > sensor.sensor.noise.reading) {
                ++misfits;
                break;
            }
    }

    /// `misses`: why intervals may hold too seldom; empty: they may not.
    void tell(const std::string& what, const std::vector<std::string>& identifiable,
              std::string_view misses) const {
        const std::string counted = fmt::format("{}, {} logs: ", what, computed);
        for (std::size_t k = 0; k < names.size(); ++k) {
            const double share = 100.0 * held[k] / computed, width = left[k] / computed;
            // By how far the share is outside what chance allows.
            const Comparison often{name,
                                   counted + names[k] + ", held in % of them, outside 90 to 99 by",
                                   outside(share), 0, fmt::format("{:.3g}", share)};
            if (misses.empty())
                compare(often);
            else
                show(often, misses);
            const bool told =
                std::find(identifiable.begin(), identifiable.end(), names[k]) != identifiable.end();
            const Comparison wide{name, counted + names[k] + ", width left of one [-]", width, 0.5};
            if (told)
                compare(wide);
            else
                show(wide, "the log hardly tells it");
        }
        show({name, counted + "seemed to differ by more than noise, % of them",
              100.0 * misfits / computed, 5},
             "the noise of so many logs, and no more");
    }

    static double outside(double share) { return std::max({fewest - share, share - most, 0.0}); }
};

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("intervals of a match hold as often as they say where all else is known") {
        const Study study = cheap_study();
        const Library library = read_library();
        const Asked asked = asked_of(study, library);
        std::vector<FitInput> all = asked.inputs;
        all.push_back(asked.clock);
        std::mt19937_64 random(20261126);
        Tally tally;
        for (int truth = 0; truth < truths; ++truth) {
            const Numbers deviations = drawn(all.size(), random);
            const auto logged =
                made_log(study, library, usual_sensors(), variant_of(all, deviations),
                         asked.clock.value(deviations.back()), until, random);
            Journal none;
            tally.take(match_log({study, library, logged, asked.inputs, asked.clock, true}, none),
                       deviations);
        }
        tally.tell("all else known", {"fuel_bed.surface_rate", "clock"}, {});
    }

    TEST_CASE("intervals of a match hold as often as they say where all else is uncertain too") {
        const Study study = cheap_study();
        const Library library = read_library();
        const Asked asked = asked_of(study, library);
        std::vector<FitInput> all = asked.inputs;
        all.push_back(asked.clock);
        const std::size_t fitted = all.size();
        for (const FitInput& each : uncertain_fit_inputs(stove_of(study, 0, library), library)) {
            const bool known = std::any_of(all.begin(), all.end(), [&](const FitInput& other) {
                return other.name == each.name;
            });
            if (!known) all.push_back(each);
        }
        std::mt19937_64 random(20261127);
        Tally tally;
        const ScratchFolder folder;  // the burns about the file's figures serve all truths
        const auto kept = folder / "kept.rows.jsonl", used = folder / "used.rows.jsonl";
        for (int truth = 0; truth < truths; ++truth) {
            const Numbers deviations = drawn(all.size(), random);
            const auto logged =
                made_log(study, library, usual_sensors(), variant_of(all, deviations),
                         asked.clock.value(deviations[fitted - 1]), until, random);
            if (truth > 0) std::filesystem::copy_file(kept, used);
            {
                Journal journal(used);
                tally.take(
                    match_log({study, library, logged, asked.inputs, asked.clock, false}, journal),
                    deviations);
            }
            if (truth == 0) std::filesystem::copy_file(used, kept);
            std::filesystem::remove(used);
        }
        tally.tell("all else uncertain", {"clock"}, "the cause is not found yet");
    }
}

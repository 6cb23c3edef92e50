#include "cli/study/fit/match_log.h"

#include <doctest/doctest.h>

#include "cli/read/read_library.h"
#include "cli/study/fit/match_page.h"
#include "tests/cli/study/fit/made_log.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

constexpr double until = 900;  // [s]

/// The inputs of the small coverage test; `validation/fit/coverage` asks a hundred truths.
std::vector<FitInput> some_inputs(const Study& study, const Library& library) {
    const Stove stove = stove_of(study, 0, library);
    return {parse_fit_input("fuel_bed.surface_rate", stove, library),
            parse_fit_input("day.wood_moisture", stove, library)};
}

const MatchedInput& input_called(const Match& match, const std::string& name) {
    for (const MatchedInput& each : match.inputs)
        if (each.input.name == name) return each;
    throw SolverError("there is no such input");
}

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/study/fit/match_log") {
    TEST_CASE("intervals hold the truths that made-up logs were drawn from") {
        const Study study = cheap_study();
        const Library library = read_library();
        std::vector<FitInput> inputs = some_inputs(study, library);
        const FitInput clock = parse_clock_offset("2min+-1min");
        std::vector<FitInput> all = inputs;
        all.push_back(clock);
        std::mt19937_64 random(7);
        int held = 0, asked = 0;
        for (int truth = 0; truth < 4; ++truth) {
            const Numbers deviations = drawn(all.size(), random);
            const auto logged =
                made_log(study, library, usual_sensors(), variant_of(all, deviations),
                         clock.value(deviations.back()), until, random);
            Journal none;
            const Match match = match_log({study, library, logged, inputs, clock, true}, none);
            for (std::size_t k = 0; k < all.size(); ++k) {
                const MatchedInput& each = match.inputs[k];
                ++asked;
                const double off = std::abs(each.estimate - deviations[k]);
                if (off <= half_interval * each.deviation) ++held;
                CHECK(off < 5 * each.deviation);  // of twelve draws one in a hundred thousand
            }
            // What the log surely tells is less than half as wide as before.
            CHECK(input_called(match, "clock").deviation < 0.5);
            CHECK(input_called(match, "fuel_bed.surface_rate").deviation < 0.5);
            for (const MatchedSensor& sensor : match.sensors) {
                CHECK(sensor.rms < 1.4 * sensor.sensor.noise.reading);
                CHECK(sensor.counted == near(sensor.sensor.noise.reading, 1e-9));
            }
        }
        // Of twelve, 95 % each, fewer than nine hold in two of ten thousand worlds.
        CHECK(held >= 9);
        CHECK(asked == 12);
    }

    TEST_CASE("a sensor that differs from any stove is given the noise by which it differs") {
        const Study study = cheap_study();
        const Library library = read_library();
        std::mt19937_64 random(3);
        const std::vector<Sensor> sensors{usual_sensor("plate_temperature", "[0]"),
                                          usual_sensor("flue_draft", "")};
        auto logged = made_log(study, library, sensors, {}, 0, until, random);
        for (std::size_t i = 0; i < logged[0].value.size(); ++i)
            if (i % 10 < 5) logged[0].value[i] += 60;
        Journal none;
        const Match match = match_log(
            {study, library, logged, some_inputs(study, library), parse_clock_offset(""), true},
            none);
        CHECK(match.sensors[0].counted > 30);
        CHECK(match.sensors[1].counted == near(0.5, 1e-9));
        CHECK(contains(match_page(match, "burn.csv", false), "differs by more than its noise"));
    }

    TEST_CASE("the page tells inputs, sensors, what hangs together and what to log next") {
        const Study study = cheap_study();
        const Library library = read_library();
        std::mt19937_64 random(5);
        const std::vector<Sensor> sensors{usual_sensor("outlet_gas_temperature", "")};
        const auto logged = made_log(study, library, sensors, {}, 0, until, random);
        Journal none;
        const Match match = match_log(
            {study, library, logged, some_inputs(study, library), parse_clock_offset(""), true},
            none);
        const std::string page = match_page(match, "burn.csv", false);
        CHECK(contains(page, "fuel_bed.surface_rate"));
        CHECK(contains(page, "What to log next"));
        CHECK(contains(page, "bare bead of 3 mm"));
        REQUIRE(match.next.size() > 3);
        for (std::size_t i = 1; i < match.next.size(); ++i)
            CHECK(match.next[i].gain <= match.next[i - 1].gain);
        CHECK(match.next.front().gain > 0);
        CHECK(match.next.back().gain > -1e-9);
        CHECK(contains(match_json(match, "burn.csv"), "\"left\""));
        CHECK(contains(match_svg(match, "burn.csv"), "matched"));
    }

    TEST_CASE("a log of before lighting, and one of what the stove has not, are refused") {
        const Study study = cheap_study();
        const Library library = read_library();
        const std::vector<FitInput> inputs = some_inputs(study, library);
        Journal none;
        const std::vector<LoggedSensor> early{{usual_sensor("flue_draft", ""), {0, 30}, {1, 1}}};
        CHECK_THROWS_WITH_AS(
            match_log({study, library, early, inputs, parse_clock_offset("1h"), true}, none),
            doctest::Contains("--clock-offset"), InputError);
        const std::vector<LoggedSensor> bench{
            {usual_sensor("tunnel_gas_temperature", "[99]"), {0, 30, 120}, {300, 300, 300}}};
        CHECK_THROWS_WITH_AS(
            match_log({study, library, bench, inputs, parse_clock_offset(""), true}, none),
            doctest::Contains("the stove has no tunnel_gas_temperature[99]"), InputError);
    }
}

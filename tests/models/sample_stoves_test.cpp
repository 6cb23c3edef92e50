#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "cli/read/embedded_data.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/burn.h"

using namespace drawwell;

namespace {

/// Six hours of a sample, whose books close and whose stove draws.
BurnOutcome sound_burn(const char* sample) {
    const Library library = read_library();
    const Stove stove = read_stove(embedded_data(sample), "sample", {}, library);
    CHECK(stove.burn.duration == 6 * 3600);
    BurnOutcome outcome = run_burn(stove, library);
    CHECK(outcome.complete);
    CHECK(outcome.summary.draws == true);
    CHECK(outcome.summary.energy_residual < 1e-3);
    CHECK(outcome.summary.mass_residual < 1e-3);
    CHECK(outcome.summary.element_residual < 1e-3);
    return outcome;
}

}  // namespace

TEST_SUITE("models/sample stoves") {
    TEST_CASE("oven tube and pots go through six hours with two reloads, and the books close") {
        const BurnOutcome outcome = sound_burn("stoves/workshop-kitchen.toml");
        CHECK(outcome.summary.fittings.size() == 3 + 3 + 4);
        for (const FittingAnswer& answer : outcome.summary.fittings) {
            if (answer.key == "steam") CHECK(*answer.value > 0);
            if (answer.key == "heat") CHECK(*answer.value > 0.5e6);
            // Hotter than a room, colder than the gas past it.
            if (answer.key == "air_most") {
                CHECK(*answer.value > 373);
                CHECK(*answer.value < outcome.summary.exit_gas_max);
            }
        }
    }

    TEST_CASE(
        "window, grid and air channel go through six hours with two reloads, and the books close") {
        const BurnOutcome outcome = sound_burn("stoves/kitchen-window.toml");
        CHECK(outcome.summary.fittings.size() == 2 + 3 + 2);
        // A pane by the fire gets hot; a grid is no hotter than the hottest gas.
        CHECK(*outcome.summary.fittings[0].value > 500);
        CHECK(*outcome.summary.fittings[2].value < outcome.summary.riser_gas_max + 100);
        CHECK(outcome.summary.flue_wet.has_value());
    }

    TEST_CASE(
        "griddle, kettle and a pot in the plate's hole go through six hours, and the books close") {
        const BurnOutcome outcome = sound_burn("stoves/market-griddle.toml");
        const auto answer = [&](std::string_view fitting, std::string_view key) {
            for (const FittingAnswer& each : outcome.summary.fittings)
                if (each.fitting == fitting && each.key == key) return each.value;
            return std::optional<double>();
        };
        // The griddle lies on the plate and is no hotter than its hottest ring.
        const Column& plate = *outcome.results.find("plate_temperature");
        REQUIRE(answer("griddle.flatbread", "fries_after"));
        CHECK(*answer("griddle.flatbread", "most") <
              *std::max_element(plate.values.begin(), plate.values.end()));
        // What the kettle holds is a fifth of the soup, which sits in the flame.
        REQUIRE(answer("pot.kettle", "boils_after"));
        REQUIRE(answer("pot.soup", "boils_after"));
        CHECK(*answer("pot.kettle", "boils_after") < *answer("pot.soup", "boils_after"));
        CHECK(outcome.summary.plate_hole == doctest::Approx(0.09));
        REQUIRE(outcome.summary.plate_bow_high);
        CHECK(std::abs(*outcome.summary.plate_bow_high) < 0.01);
    }

    TEST_CASE("a bench keeps some of the fire's heat for the hours after it") {
        const BurnOutcome outcome = sound_burn("stoves/workshop-bench.toml");
        const Column& room = *outcome.results.find("heat_to_room");
        const auto at = [&](double hours) {
            return room.values[static_cast<std::size_t>(hours * 120)];  // a row each 30 s
        };
        // The last wood is burnt by three hours and a half.
        CHECK(outcome.results.find("heat_release")->values[4 * 120] < 200);
        CHECK(at(5) > 0.1 * at(2));
        CHECK(at(6) < at(5));
        const Column& duct = *outcome.results.find("flue_wall_temperature");
        const double first = duct.values[5 * 120 * duct.width];  // of the bench, two hours on
        CHECK(first > outcome.results.find("outlet_gas_temperature")->values[5 * 120] - 60);
        CHECK(first > 308);
    }

    TEST_CASE("a damp bench takes up heat that a dry one passes on, and is not dry in one fire") {
        const BurnOutcome outcome = sound_burn("stoves/workshop-damp-bench.toml");
        REQUIRE(outcome.summary.fittings.size() == 3);
        CHECK(*outcome.summary.fittings[0].value > 0.05);
        CHECK_FALSE(outcome.summary.fittings[1].value);
        CHECK(*outcome.summary.fittings[2].value > 1e6);
    }

    TEST_CASE("a bell gives the room heat after the fire, its gas in two layers most of the time") {
        const BurnOutcome outcome = sound_burn("stoves/workshop-bell.toml");
        REQUIRE(outcome.summary.fittings.size() == 5);
        CHECK(*outcome.summary.fittings[3].value > 0.2 * *outcome.summary.fittings[2].value);
        CHECK(*outcome.summary.fittings[4].value > 0.5);
    }

    TEST_CASE("a bypass past the level run warms its stack in the first minutes") {
        const BurnOutcome outcome = sound_burn("stoves/workshop-level-run.toml");
        const Library library = read_library();
        Stove shut =
            read_stove(embedded_data("stoves/workshop-level-run.toml"), "sample", {}, library);
        shut.schedule.bypass = Steps(0.0);
        shut.burn.duration = 600;
        const BurnOutcome without = run_burn(shut, library);
        const auto at_four = [](const BurnOutcome& of, const char* name) {
            return of.results.find(name)->values[4 * 2];
        };
        CHECK(at_four(outcome, "flue_top_temperature") >
              at_four(without, "flue_top_temperature") + 3);
        CHECK(at_four(outcome, "drive") > at_four(without, "drive"));
    }

    TEST_CASE(
        "where all air comes from the room, a fan there and a gust on the flue are one push") {
        const Library library = read_library();
        Stove stove = read_stove(embedded_data("stoves/workshop.toml"), "sample", {}, library);
        stove.burn.duration = 1200;  // its weakest moment lies between two samples, near 11 min
        const Summary summary = run_burn(stove, library).summary;
        REQUIRE(summary.reserve_draw_min);
        CHECK(summary.reserve_suction_min == summary.reserve_draw_min);
    }

    TEST_CASE("with ducted air a fan in the room is another thing than a gust") {
        const BurnOutcome outcome = sound_burn("stoves/workshop-ducted.toml");
        REQUIRE(outcome.summary.reserve_suction_min);
        REQUIRE(outcome.summary.reserve_draw_min);
        CHECK(*outcome.summary.reserve_suction_min < *outcome.summary.reserve_draw_min - 0.2);
        // The fan takes air from the feed, not from the duct.
        const auto at = [&](const char* name, std::size_t minute) {
            return outcome.results.find(name)->values[2 * minute];
        };
        CHECK(at("feed_air_flow", 89) > at("feed_air_flow", 100));
        CHECK(at("side_air_flow", 100) > 0.9 * at("side_air_flow", 89));
    }
}

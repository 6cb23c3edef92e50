#include "models/stops.h"

#include <doctest/doctest.h>

#include <cmath>
#include <functional>
#include <limits>
#include <random>

#include "models/burn.h"
#include "models/stove_run.h"
#include "solver/errors.h"
#include "solver/instants.h"
#include "tests/models/plain_stove.h"
#include "tests/models/sample_burn.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;
using drawwell::testing::burn_sample;
using Times = std::vector<double>;

namespace {

Load load(const char* name, Times times) {
    return {.name = name,
            .times = std::move(times),
            .kind = "wood",
            .pieces = 1,
            .side = 0.03,
            .length = 0.3,
            .mass = 0.2};
}

/// A stove with wood in the fire from the start, in few cells, for a quarter of an hour.
Stove burning() {
    Stove stove = plain_stove();
    stove.kindling.emplace().mass = 0.1;
    stove.kindling->kind = "wood";
    stove.loads = {load("first", {0})};
    stove.burn.duration = 900;
    stove.burn.reserve_every = stove.burn.sustained_every = 0;
    stove.burn.refine = 0.25;
    return stove;
}

/// What may happen at a time of a burn.
const std::vector<std::function<void(Stove&, double)>> happenings{
    [](Stove& stove, double t) { stove.loads.push_back(load("a", {t})); },
    [](Stove& stove, double t) {
        stove.loads.push_back(load("b", {t, t + 120}));
    },
    [](Stove& stove, double t) {
        stove.schedule.damper = Steps({0, t}, {1, 0.5});
    },
    [](Stove& stove, double t) {
        stove.schedule.feed_cover = Steps({0, t, t + 60}, {0, 0.5, 0});
    },
    [](Stove& stove, double t) { stove.schedule.port = Steps({t}, {0.8}); },
    [](Stove& stove, double t) {
        stove.site.outdoor = Table({t, t + 300}, {275, 285});
    },
    [](Stove& stove, double t) {
        stove.site.room_suction = Table({0, t, t + 1}, {0, 0, 2});
    },
    [](Stove& stove, double t) {
        Pot pot;
        pot.name = "kettle";
        pot.diameter = 0.2;
        pot.height = 0.12;
        pot.water = 1;
        pot.metal = 0.8;
        pot.bottom = "flat";
        pot.put_on = {t};
        stove.fittings.emplace_back(pot);
    },
    [](Stove& stove, double t) { stove.burn.duration = t; },
    [](Stove& stove, double t) { stove.burn.output_every = t / 11; },
    [](Stove& stove, double t) {
        stove.burn.reserve_every = t / 4;
        stove.burn.sustained_every = t / 2;
    },
};

double ulps_on(double time, int count) {
    const double towards = count > 0 ? std::numeric_limits<double>::infinity() : 0;
    for (int i = 0; i < std::abs(count); ++i) time = std::nextafter(time, towards);
    return time;
}

}  // namespace

TEST_SUITE("models/stops") {
    TEST_CASE("a stove's stops are the times of all that changes in it") {
        Stove stove = burning();
        for (const auto& happens : happenings) happens(stove, 600);
        CHECK(stops_of(stove) == Times{0, 600, 601, 660, 720, 900});
        CHECK(stops_of(Stove{}) == Times{0});
    }

    TEST_CASE("what is to happen a rounding error apart happens at the same stop") {
        Stove stove = burning();
        stove.loads.push_back(load("a", {1.1 * 3600}));
        stove.schedule.damper = Steps({0, 66 * 60}, {1, 0.5});
        const Stove common = at_common_stops(stove);
        CHECK(common.loads.back().times == Times{66 * 60});
        CHECK(common.schedule.damper.time() == Times{0, 66 * 60});
        CHECK(stops_of(common) == Times{0, 66 * 60});
        const StoveRun run(stove, plain_library());
        CHECK(run.built.load_times.back().time == 66 * 60);
        CHECK(run.instant(1.1 * 3600) == 66 * 60);
        CHECK(run.instant(4000) == 4000);
    }

    TEST_CASE("two values of one table at the same time are refused") {
        Stove stove = burning();
        stove.site.outdoor = Table({0, 66 * 60, 1.1 * 3600}, {270, 270, 280});
        CHECK_THROWS_AS(at_common_stops(stove), InputError);
    }

    TEST_CASE("pairs of stops from one to a thousand roundings apart burn as the same time does") {
        std::mt19937 dice(7);
        const auto pick = [&](std::size_t count) {
            return std::uniform_int_distribution<std::size_t>(0, count - 1)(dice);
        };
        const double gaps[] = {0.3e-6, -0.9e-6, 1e-9, 1.2e-6, 2e-6, -1e-5, 1e-4, 1e-3};
        const int ulps[] = {1, -1, 2, -2, 10, -10, 1000, -1000};
        for (int i = 0; i < 60; ++i) {
            const std::size_t a = pick(happenings.size()), b = pick(happenings.size());
            if (a == b) continue;
            // Half of them where a row is due too.
            const double time = i % 2 ? 30.0 * static_cast<double>(3 + pick(10))
                                      : std::uniform_real_distribution<double>(90, 400)(dice);
            const double other =
                i % 3 == 0 ? time + gaps[pick(std::size(gaps))] : ulps_on(time, ulps[pick(8)]);
            const auto burn = [&](double second) {
                Stove stove = burning();
                happenings[a](stove, time);
                happenings[b](stove, second);
                return run_burn(stove, plain_library());
            };
            CAPTURE(a);
            CAPTURE(b);
            CAPTURE(time);
            CAPTURE(other - time);
            const BurnOutcome together = burn(time);
            BurnOutcome apart;
            REQUIRE_NOTHROW(apart = burn(other));
            CHECK(apart.complete);
            if (std::abs(other - time) <= same_instant)
                CHECK(apart.results.time.size() == together.results.time.size());
            // A millisecond of the fire, and steps that end elsewhere.
            CHECK(apart.summary.heat_released == near(together.summary.heat_released, 2e-3));
            CHECK(apart.summary.energy_residual < 1e-3);
        }
    }

    TEST_CASE("times spelled in other units are one stop in a burn from a file") {
        // Each is a rounding error off the seconds: 4.1 min is 246 s, 8.2 min 492 s.
        const std::string files[][3] = {
            {"8.2 min", "load.first.at=4.1 min", "schedule.damper=[['0 s', 1], ['246 s', 0.5]]"},
            {"8.2 min", "load.first.at=246 s",
             "site.outdoor=[['0 s', '5 °C'], ['4.1 min', '6 °C']]"},
            {"8.2 min", "load.first.at=246 s", "burn.output_every=2.05 min"},
            {"8.2 min", "burn.refine=0.5",
             "schedule.load=[['246 s', 'first'], ['4.1 min', 'main']]"},
            {"8.2 min", "burn.refine=0.5",
             "schedule.load=[['4.1 min', 'first'], ['246 s', 'main']]"},
            {"492 s", "load.first.at=4 min", "load.main.at=8.2 min"},
            {"8.2 min", "load.first.at=4 min", "load.main.at=492 s"},
            {"34 min", "burn.lit_at=19:30",
             "schedule.load=[['20:03', 'first'], ['0.55 h', 'main']]"},
        };
        for (const auto& [duration, first, second] : files) {
            CAPTURE(first);
            CAPTURE(second);
            BurnOutcome burn;
            REQUIRE_NOTHROW(burn = burn_sample({"burn.duration=" + duration, first, second}));
            CHECK(burn.complete);
            CHECK(burn.results.time.back() > 490);
        }
    }
}

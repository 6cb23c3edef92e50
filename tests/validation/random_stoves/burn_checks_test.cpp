#include "validation/random_stoves/burn_checks.h"

#include <doctest/doctest.h>

#include <limits>

#include "models/fire/solid_fuel.h"
#include "tests/models/plain_stove.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

BurnChecks::Bounds wood_bounds() {
    return {.gas = std::make_shared<const GasModel>(volatile_gas(plain_fuel())),
            .fuel_surface = 623,
            .air = 293,
            .sources = 1373};
}

/// A made-up instant: one wall, and air in one cell.
Instant instant(double time, double wall, double gas) {
    Instant made;
    made.time = time;
    made.state = {1, 2};
    made.wall = {wall, 290};
    made.stretches = {{.name = "riser", .mass_fraction = dry_air(), .temperature = {280, gas}}};
    return made;
}

/// The only complaint, or what else there is.
std::string complaint(const BurnChecks& checks) {
    const auto all = checks.complaints();
    return all.empty() ? "none" : all.size() == 1 ? all.front() : "several";
}

std::string complaint(const Instant& made) {
    BurnChecks checks(wood_bounds());
    checks.see(made);
    return complaint(checks);
}

bool has(const std::string& text, const char* words) {
    return text.find(words) != std::string::npos;
}

}  // namespace

TEST_SUITE("validation/random_stoves/burn_checks") {
    TEST_CASE("an instant within its bounds brings no complaint") {
        CHECK(complaint(instant(0, 600, 599)) == "none");
    }

    TEST_CASE("a number that is none, wherever it stands, brings a complaint") {
        Instant made = instant(30, 600, 500);
        made.state[1] = no_number;
        CHECK(has(complaint(made), "the state at 30 s: nan"));
        CHECK(has(complaint(instant(30, no_number, 500)), "a wall at 30 s: a temperature of nan"));
        CHECK(has(complaint(instant(30, 600, no_number)), "riser at 30 s: a temperature of nan"));
        made = instant(30, 600, 500);
        made.stretches[0].mass_fraction[co] = std::numeric_limits<double>::infinity();
        CHECK(has(complaint(made), "riser at 30 s: inf"));
    }

    TEST_CASE("a temperature of zero or less brings a complaint") {
        CHECK(has(complaint(instant(30, 0, 500)), "a temperature of 0 K"));
        CHECK(has(complaint(instant(30, 600, -3)), "a temperature of -3 K"));
    }

    TEST_CASE("air hotter than the hottest wall brings a complaint, but not over plain heat") {
        CHECK(has(complaint(instant(30, 600, 605)), "gas in riser at 30 s: 605.0 K, 5.00 K over"));
        BurnChecks::Bounds plain = wood_bounds();
        plain.gas.reset();
        BurnChecks checks(plain);
        checks.see(instant(30, 600, 2500));
        CHECK(complaint(checks) == "none");
    }

    TEST_CASE("room air warmer than the walls brings no complaint") {
        CHECK(complaint(instant(30, 285, 292)) == "none");
    }

    TEST_CASE("a wall hotter than all that could have heated it brings a complaint") {
        CHECK(has(complaint(instant(30, 1400, 600)), "a wall at 30 s: 1400.0 K, 27.00 K over"));
    }

    TEST_CASE("a wall may keep what hotter gas once gave it, or what it had at the start") {
        BurnChecks::Bounds plain = wood_bounds();
        plain.gas.reset();
        BurnChecks heated(plain);
        heated.see(instant(30, 600, 1500));
        heated.see(instant(60, 1450, 600));
        CHECK(complaint(heated) == "none");
        BurnChecks held(plain);
        held.see(instant(0, 1500, 600));
        held.see(instant(30, 1490, 600));
        CHECK(complaint(held) == "none");
    }

    TEST_CASE("what a burn answers is looked through, columns, figures and books") {
        const auto of = [](const BurnOutcome& outcome) {
            BurnChecks checks(wood_bounds());
            checks.see(outcome);
            return complaint(checks);
        };
        BurnOutcome good;
        for (double* figure : {&good.summary.riser_gas_max, &good.summary.exit_gas_max})
            *figure = 700;
        good.results.columns = {{"plate_temperature", "K", "", "", 1, {300}},
                                {"drive", "Pa", "", "", 1, {-2}}};
        CHECK(of(good) == "none");

        BurnOutcome bad = good;
        bad.results.columns[0].values[0] = -1;
        CHECK(has(of(bad), "plate_temperature: a temperature of -1 K"));
        bad = good;
        bad.results.columns[1].values[0] = no_number;
        CHECK(has(of(bad), "drive: nan"));
        bad = good;
        bad.summary.reserve_draw_min = no_number;
        CHECK(has(of(bad), "reserve_draw_min: nan"));
        bad = good;
        bad.summary.plate_pot.emplace().fry = no_number;
        CHECK(has(of(bad), "cooking band: nan"));
        for (double Summary::*residual :
             {&Summary::energy_residual, &Summary::mass_residual, &Summary::element_residual}) {
            bad = good;
            bad.summary.*residual = 1.1e-3;
            CHECK(has(of(bad), "are off by 1.10e-03"));
        }
    }

    TEST_CASE("a real burn is seen instant by instant, with its gas and walls") {
        Stove stove = plain_stove();
        stove.burn_rate = Table(3e-4);
        stove.burn.duration = 300;
        stove.burn.reserve_every = 60;
        const Library library = plain_library();
        BurnChecks checks(BurnChecks::bounds_of(stove, library));
        std::vector<double> times;
        double hottest = 0;
        std::size_t gas = 0;
        BurnWatch watch;
        watch.observe = [&](double time, std::span<const double> state, const HeatBalance& at) {
            const Instant seen = instant_of(time, state, at);
            checks.see(seen);
            times.push_back(time);
            gas = seen.stretches.size();
            for (const auto& stretch : seen.stretches)
                for (const double each : stretch.temperature) hottest = std::max(hottest, each);
        };
        const BurnOutcome burn = run_burn(stove, library, watch);
        checks.see(burn);
        CHECK(complaint(checks) == "none");
        CHECK(times == burn.results.time);
        CHECK(gas == 7);  // feed, tunnel, riser, turn, annulus and two flue sections
        CHECK(hottest >= burn.summary.riser_gas_max);
        CHECK(checks.worst().gas > -500);  // it did look at the gas
    }
}

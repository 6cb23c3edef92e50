#include "models/recorder.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "models/fire/burnout.h"
#include "models/fittings/fittings.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// A stove with a hot firebox and warm walls elsewhere, recorded as it stands.
struct Recorded {
    explicit Recorded(const Stove& the_stove, std::vector<double> fuel = {})
        : stove(the_stove),
          built(build_network(stove, plain_library())),
          topology(find_topology(built.network)),
          balance(built.network, topology),
          recorder(stove, built),
          state(built.network.state_count()),
          rate(state.size()) {
        for (std::size_t i = 0; i < built.network.solids.size(); ++i) {
            const Solid& solid = built.network.solids[i];
            const bool firebox =
                solid.name.starts_with("tunnel") || solid.name.starts_with("riser");
            state[i] = solid.mass * solid.curve->enthalpy(firebox ? 900 : 400);
        }
        std::copy(fuel.begin(), fuel.end(), state.end() - static_cast<std::ptrdiff_t>(fuel.size()));
        sample(0);
    }
    Recorded(const Recorded&) = delete;
    Recorded& operator=(const Recorded&) = delete;

    void sample(double time) {
        balance.rates(time, state, rate);
        recorder.sample(time, state, balance);
    }
    double at(std::string_view name, std::size_t cell = 0) const {
        return recorder.results().find(name)->values.at(cell);
    }

    Stove stove;
    BuiltStove built;
    Topology topology;
    HeatBalance balance;
    Recorder recorder;
    std::vector<double> state, rate;
};

Stove burning(double wet_wood = 0.0007) {
    Stove stove = plain_stove();
    stove.burn_rate = Table(wet_wood);
    stove.side_air = {{.area = 0.0005, .height = 0.05, .name = "slot"}};
    stove.site.room_suction = Table(1.5);
    stove.burn.reserve_every = 0;  // seeking spare draw leaves the gas as it was at some other flow
    return stove;
}

}  // namespace

TEST_SUITE("models/recorder") {
    TEST_CASE("every column has a value for each of its cells at each instant") {
        Recorded run(burning());
        run.sample(30);
        const Results& results = run.recorder.results();
        CHECK(results.time == std::vector<double>{0, 30});
        CHECK(results.columns.size() ==
              all_columns().size() - 5 - fitting_columns().size());  // no loads, no bow
        for (const Column& column : results.columns) {
            CAPTURE(column.name);
            CHECK(column.values.size() == 2 * column.width);
        }
        for (const Axis& axis : results.axes) CHECK(axis.positions.size() > 1);
    }

    TEST_CASE("each load shows its water, wood and embers, and the ash of what has burned") {
        Stove stove = plain_stove();
        stove.kindling = Kindling{.mass = 0.2, .kind = "wood"};
        stove.loads = {{.name = "late",
                        .times = {600},
                        .kind = "wood",
                        .side = 0.03,
                        .length = 0.3,
                        .moisture_wet_basis = 0.2,
                        .mass = 0.5}};
        Recorded run(stove, {0, 0.1, 0.02, 0, 0, 0, 0, 0, 0});
        const auto& axes = run.recorder.results().axes;
        const auto loads = std::find_if(axes.begin(), axes.end(),
                                        [](const Axis& axis) { return axis.name == "load"; });
        REQUIRE(loads != axes.end());
        CHECK(loads->positions == std::vector<double>{0, 600});
        CHECK(loads->unit == "s");
        CHECK(run.at("load_wood", 0) == 0.1);
        CHECK(run.at("load_char", 0) == 0.02);
        CHECK(run.at("load_wood", 1) == 0);
        // Kindling is at 12 % of its wet mass; what is not yet in has none.
        CHECK(run.at("load_water", 0) == near(0.1 / 0.995 * 0.12 / 0.88, 1e-9));
        auto fuel = std::span(run.state).last(9);
        fuel[1] = 0;
        fuel[5] = 0.3;
        run.sample(30);
        CHECK(run.at("load_water", 3) == near(0.3 / 0.995 * 0.25, 1e-9));
        fuel[8] = 0.02;
        run.sample(60);
        CHECK(run.at("ash_left", 2) == 0.02);
        // On a floor of 110 by 125 mm, 500 kg to the cubic metre.
        CHECK(run.at("ash_depth", 2) == near(0.02 / 500 / (0.11 * 0.125), 1e-9));
    }

    TEST_CASE("wood burned by a table leaves its ash") {
        Recorded run(burning());
        CHECK(run.at("ash_left") == 0);
        run.state[run.state.size() - 2] += 2 * 0.995;
        run.sample(30);
        CHECK(run.at("ash_left", 1) == near(0.01, 1e-9));
        CHECK(run.recorder.results().find("load_wood") == nullptr);
    }

    TEST_CASE("parts that a stove lacks leave no columns, and no empty ones") {
        Stove stove = burning();
        stove.barrel.reset();
        stove.plate.reset();
        stove.flue.outlet = 0;
        const Recorded run(stove);
        CHECK(run.recorder.results().find("plate_temperature") == nullptr);
        CHECK(run.recorder.results().find("barrel_temperature") == nullptr);
        for (const Column& column : run.recorder.results().columns) {
            CAPTURE(column.name);
            CHECK(column.values.size() == column.width);
        }
    }

    TEST_CASE("pressures close: what drives is what is lost, but for suction in the room") {
        const Recorded run(burning());
        double losses = 0, buoyancy = 0;
        for (const char* part : {"feed", "tunnel", "riser", "turn", "annulus", "flue"})
            losses += run.at(std::string("loss_") + part);
        for (const char* part : {"feed", "riser", "annulus", "flue"})
            buoyancy += run.at(std::string("buoyancy_") + part);
        CHECK(run.at("drive") == near(buoyancy, 1e-12));
        const auto& junctions = run.built.network.junctions;
        const double room =
            junctions[index(run.built.network.passages[*run.built.layout.feed].from)].pressure;
        CHECK(room < 0);
        // The flow is sought to 1e-5 Pa.
        CHECK(std::abs(run.at("drive") + room - losses) < 1e-4);
        // Suction at the feed's foot is the mouth's and bend's loss and the air's own speed.
        CHECK(run.at("feed_suction") > 0);
        CHECK(run.at("flue_draft") > run.at("feed_suction"));
    }

    TEST_CASE("what goes in by feed and slot, and the wood's vapours, leave by the flue") {
        const Recorded run(burning());
        const double dry = 0.0007 * 0.84 * 0.995;
        const double vapours = dry * 0.8 + 0.0007 * 0.16;
        CHECK(run.at("side_air_flow") > 0);
        // Emission is settled to 1e-8 kg/s.
        CHECK(std::abs(run.at("flue_gas_flow") - run.at("feed_air_flow") - run.at("side_air_flow") -
                       vapours) < 1e-7);
        CHECK(run.at("pyrolysis_rate") == near(dry, 1e-12));
    }

    TEST_CASE("heat set free is what the wood lost, less what leaves hot or unburnt") {
        // With embers, so that carbon monoxide counts as well.
        for (const double embers : {0.0, 0.06}) {
            const Recorded run(burning(), {0.0, embers});
            const auto& fire = *run.built.fire;
            const double step = 1e-3;
            const std::size_t n = run.state.size();
            const std::vector<double> before{run.state[n - 2], run.state[n - 1]};
            const std::vector<double> after{before[0] + step * run.rate[n - 2],
                                            before[1] + step * run.rate[n - 1]};
            const double lost = (fire.heating_value(before) - fire.heating_value(after)) / step;
            const GasModel& gas = *run.built.gas;
            const double warm = 0.8 * run.at("pyrolysis_rate") *
                                (gas.species_enthalpy(volatiles, pyrolysis_temperature) -
                                 gas.species_enthalpy(volatiles, 298.15));
            const March& march = run.balance.flow().march();
            const double unburnt =
                run.at("flue_gas_flow") *
                gas.higher_heating_value(
                    march.crossing(run.built.layout.flue.back()).outlet.mass_fraction);
            CHECK(run.at("heat_release") == near(lost - warm - unburnt, 1e-3));
        }
    }

    TEST_CASE("the air ratio is oxygen taken in over oxygen that wood and embers need") {
        const Recorded run(burning());
        const double air = run.at("feed_air_flow") + run.at("side_air_flow");
        const double needed = 0.8 * run.at("pyrolysis_rate") * run.built.gas->oxygen_demand();
        CHECK(run.at("air_ratio") == near(air * dry_air()[o2] / needed, 1e-4));
        CHECK(run.recorder.oxygen_in()[0] / run.recorder.oxygen_needed()[0] ==
              near(run.at("air_ratio"), 1e-12));
        const Recorded still(burning(0));
        CHECK(still.at("air_ratio") == 99);
    }

    TEST_CASE("a plain heat source counts as heat set free") {
        Stove stove = plain_stove();
        stove.heat_source = Table(3000);
        const Recorded run(stove);
        CHECK(run.at("heat_release") == near(3000, 1e-6));
    }

    TEST_CASE("the burnout index adds up time over burnout time, cell by cell") {
        const Recorded run(burning());
        const Layout& layout = run.built.layout;
        const March& march = run.balance.flow().march();
        const Composition& gas = march.junction_gas(layout.riser_end).mass_fraction;
        const double constant = run.built.gas->mixture(gas).gas_constant();
        double index = 0;
        const auto add = [&](std::size_t p, const std::vector<double>& lengths) {
            for (std::size_t i = 0; i < lengths.size(); ++i) {
                const GasCell& cell = march.cells()[run.built.network.passages[p].first_cell + i];
                const BurnoutGas burning_gas{
                    .temperature = cell.mean_temperature,
                    .pressure = run.stove.site.pressure,
                    .oxygen = cell.oxygen * constants::molar_gas / 31.998e-3 / constant,
                    .water = gas[h2o] * constants::molar_gas / 18.015e-3 / constant};
                index += lengths[i] / cell.velocity / carbon_monoxide_time(burning_gas);
            }
        };
        add(*layout.tunnel, std::vector<double>(4, 0.34 / 4));
        // From the axis at 55 mm: two cells to the barrel's foot, one to the outlet, seven above.
        std::vector<double> riser{0.0475, 0.0475, 0.075};
        riser.resize(10, (0.725 - 0.225) / 7);
        add(*layout.riser, riser);
        CHECK(index > 0);
        CHECK(run.at("burnout_index") == near(index, 1e-9));
    }

    TEST_CASE("spare draw is worked out at its own pace and kept between") {
        Stove stove = burning();
        stove.burn.reserve_every = 60;
        Recorded run(stove);
        CHECK(run.at("reserve_draw", 0) > 0);
        for (std::size_t i = 0; i < run.built.network.solids.size(); ++i) run.state[i] *= 0.9;
        run.sample(30);
        run.sample(60);
        CHECK(run.at("reserve_draw", 1) == run.at("reserve_draw", 0));
        CHECK(run.at("reserve_draw", 2) != run.at("reserve_draw", 1));
    }
}

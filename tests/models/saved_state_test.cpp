#include "models/saved_state.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "cli/read/embedded_data.h"
#include "cli/read/overrides.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/build_network.h"
#include "models/burn.h"
#include "solver/errors.h"
#include "tests/models/sample_burn.h"

namespace drawwell {
namespace {

using testing::value_at;

constexpr double hour = 3600, minute = 60;

const Library& library() {
    static const Library read = read_library();
    return read;
}

Stove sample(std::initializer_list<std::string> overrides) {
    std::vector<Override> parsed{parse_override("burn.reserve_every=0 s")};
    for (const std::string& text : overrides) parsed.push_back(parse_override(text));
    return read_stove(embedded_data("stoves/allotment-kitchen.toml"), "sample", parsed, library());
}

/// The rest of a burn after that time [s]: later loads only, no kindling.
Stove rest_of(Stove stove, double after) {
    stove.kindling.reset();
    stove.burn.duration -= after;
    for (Load& load : stove.loads) {
        std::erase_if(load.times, [&](double time) { return time < after; });
        for (double& time : load.times) time -= after;
    }
    std::erase_if(stove.loads, [](const Load& load) { return load.times.empty(); });
    return stove;
}

/// The sample after an hour of its burn.
const SavedState& after_an_hour() {
    static const SavedState state = run_burn(sample({"burn.duration=1 h"}), library()).end_state;
    return state;
}

/// A pile of embers and nothing else, in a stove that has gone cold.
SavedState cold_with_embers(double embers) {
    SavedState state = after_an_hour();
    for (auto& [name, temperature] : state.temperature) temperature = 279.15;
    state.left.clear();
    if (embers > 0) {
        LeftLot left{.lot = {.name = "main", .dry_mass = 0.6}, .place = "hearth"};
        left.state[2] = embers;
        state.left.push_back(left);
    }
    return state;
}

Stove one_load(double time) {
    Stove stove = sample({"burn.duration=20 min"});
    stove.kindling.reset();
    stove.loads.resize(1);
    stove.loads[0].times = {time};
    return stove;
}

}  // namespace

TEST_SUITE("models/saved_state") {
    TEST_CASE("a burn in two halves goes as the burn in one") {
        const Stove stove = sample({"burn.duration=2 h"});
        const BurnOutcome whole = run_burn(stove, library());
        const BurnOutcome rest = run_burn(rest_of(stove, hour), library(), {}, &after_an_hour());
        // The second half steps anew from its start; where nothing else differs that is worth the
        // tolerance of a step, 2e-4 of some 1000 K, and a little of what the fire makes of it.
        for (const char* column : {"riser_wall_temperature", "plate_temperature",
                                   "barrel_temperature", "flue_wall_temperature"})
            for (const double time : {0.0, 5 * minute, 30 * minute, hour}) {
                CAPTURE(column);
                CAPTURE(time);
                CHECK(std::abs(value_at(rest.results, column, time) -
                               value_at(whole.results, column, hour + time)) < 0.6);
            }
        for (const double time : {0.0, 30 * minute, hour}) {
            CHECK(std::abs(value_at(rest.results, "wood_left", time) -
                           value_at(whole.results, "wood_left", hour + time)) < 5e-4);
            CHECK(std::abs(value_at(rest.results, "char_left", time) -
                           value_at(whole.results, "char_left", hour + time)) < 2e-4);
        }
        CHECK(rest.summary.energy_residual < 1e-3);
        CHECK(rest.summary.mass_residual < 1e-3);
        CHECK(rest.summary.element_residual < 1e-3);
        CHECK_FALSE(rest.summary.cold_start);
    }

    TEST_CASE("what was left counts as fuel of the burn that takes it over") {
        Stove stove = one_load(5 * minute);
        stove.loads.clear();
        const BurnOutcome burn = run_burn(stove, library(), {}, &after_an_hour());
        const double left = after_an_hour().wood_left();
        REQUIRE(left > 0.05);
        CHECK(burn.summary.wood_burned > 0.5 * left);
        CHECK(burn.summary.wood_burned <= left);
        CHECK(burn.summary.element_residual < 1e-3);
        CHECK(burn.summary.energy_residual < 1e-3);
    }

    TEST_CASE("a turned draw stays turned, a forward one forward") {
        // Suction in the room turned it; its walls would carry it either way once that is over.
        SavedState state =
            run_burn(sample({"burn.duration=20 min", "site.room_suction=4 Pa"}), library())
                .end_state;
        const Stove stove = sample({"burn.duration=5 min", "heat.power=2 kW"});
        const auto flow_after = [&](double time) {
            const BurnOutcome burn = run_burn(stove, library(), {}, &state);
            return value_at(burn.results, "feed_air_flow", time);
        };
        CHECK(flow_after(0) < 0);
        CHECK(flow_after(5 * minute) < 0);
        for (auto& [name, flow] : state.inlet_flow) flow = -flow;
        CHECK(flow_after(0) > 0);
        CHECK(flow_after(5 * minute) > 0);
    }

    TEST_CASE("embers light a load without kindling, a cold hearth does not") {
        const SavedState embers = cold_with_embers(0.05), out = cold_with_embers(0);
        const BurnOutcome lit = run_burn(one_load(minute), library(), {}, &embers);
        const BurnOutcome unlit = run_burn(one_load(minute), library(), {}, &out);
        CHECK(lit.summary.wood_burned > 0.1);
        CHECK(unlit.summary.wood_burned < 1e-3);
    }

    TEST_CASE("left wood takes its place in the feed") {
        SavedState from = after_an_hour();
        LeftLot whole = from.left.back();
        whole.state[1] = whole.lot.dry_mass;
        REQUIRE(whole.lot.section > 0.003);
        from.left = {whole, whole, whole};
        const Stove stove = one_load(minute);
        const BuiltStove filled = build_network(stove, library(), &from);
        const BuiltStove empty = build_network(stove, library());
        // Nine sticks of 35 mm already stand in a feed of 110 mm square.
        std::vector<double> beside = filled.network.initial_fuel,
                            alone = empty.network.initial_fuel;
        CHECK(empty.bed->put_in(0, alone));
        CHECK_FALSE(filled.bed->put_in(0, beside));
        CHECK(filled.bed->lots().size() == 1 + from.left.size());
        CHECK(filled.bed->dry_wood(filled.network.initial_fuel) ==
              doctest::Approx(from.wood_left()));
    }

    TEST_CASE("what lies at the riser's foot goes on there, or at the hearth of a stove without") {
        SavedState from = cold_with_embers(0.05);
        from.left[0].place = "riser foot";
        const auto place = [&](const SavedState& state) {
            const BuiltStove built = build_network(one_load(minute), library(), &state);
            const FuelLot& lot = built.bed->lots().back();
            CHECK(lot.name == "left.main");
            return built.network.junctions[index(built.network.fire_sites[lot.site])].name;
        };
        CHECK(place(from) == "riser foot");
        from.left[0].place = "bread oven";
        CHECK(place(from) == "hearth");
    }

    TEST_CASE("embers of a burn-rate table burn on, wood of loads does not burn by a table") {
        const SavedState table =
            run_burn(sample({"burn.duration=20 min", "burn_rate.table=4 kg/h"}), library())
                .end_state;
        CHECK(table.wood_left() == 0);
        REQUIRE(table.embers_left() > 1e-3);

        const Stove stove = sample({"burn.duration=20 min", "burn_rate.table=0 kg/h"});
        const BurnOutcome on = run_burn(stove, library(), {}, &after_an_hour());
        CHECK(on.results.find("char_left")->values.front() ==
              doctest::Approx(after_an_hour().embers_left()));
        CHECK(on.results.find("char_left")->values.back() < 0.1 * after_an_hour().embers_left());
        CHECK(on.summary.wood_burned == doctest::Approx(0).epsilon(1e-9));
        CHECK(on.summary.element_residual < 1e-3);
        CHECK(on.summary.remarks.size() == 2);
    }

    TEST_CASE("a saved state names each piece of wall once") {
        std::set<std::string> names;
        for (const auto& [name, temperature] : after_an_hour().temperature) names.insert(name);
        CHECK(names.size() == after_an_hour().temperature.size());
    }

    TEST_CASE("another stove, or other cells, are refused with the first pieces that differ") {
        const auto refused = [](std::initializer_list<std::string> overrides) {
            try {
                build_network(sample(overrides), library(), &after_an_hour());
            } catch (const InputError& error) {
                return std::string(error.what());
            }
            return std::string();
        };
        CHECK(refused({"tunnel.roof=30 mm vermiculite_board"}).empty());
        const std::string finer = refused({"burn.refine=2"}),
                          coarser = refused({"burn.refine=0.5"});
        CHECK(finer.find("it lacks") != std::string::npos);
        CHECK(finer.find("feed.wall.") != std::string::npos);
        CHECK(coarser.find("that this stove lacks") != std::string::npos);
    }

    TEST_CASE("another material takes over the temperature, a held wall its own") {
        SavedState from = after_an_hour();
        const BuiltStove other =
            build_network(sample({"plate.material=stainless_304"}), library(), &from);
        for (std::size_t i = 0; i < from.temperature.size(); ++i)
            CHECK(other.network.solids[i].initial_temperature == from.temperature[i].second);
        std::vector<Solid> walls(1);
        walls[0].name = "face";
        walls[0].held = true;
        walls[0].initial_temperature = 800;
        from.temperature = {{"face", 300}};
        warm_walls(walls, from);
        CHECK(walls[0].initial_temperature == 800);
    }
}

}  // namespace drawwell

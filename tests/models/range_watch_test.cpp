#include "models/range_watch.h"

#include <doctest/doctest.h>

#include <cmath>
#include <set>

#include "models/fire/burnout.h"
#include "models/fire/flame.h"
#include "models/laws/convection.h"
#include "models/laws/gas_radiation.h"
#include "models/laws/losses.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// Half a minute of a stove with firebox and riser at 900 K and all else at 400 K.
std::vector<Stretched> watched(const Stove& stove, const Library& library = plain_library(),
                               double released = 30 * 10e3) {
    const BuiltStove built = build_network(stove, library);
    const Topology topology = find_topology(built.network);
    HeatBalance balance(built.network, topology);
    std::vector<double> state(built.network.state_count()), rate(state.size());
    for (std::size_t i = 0; i < built.network.solids.size(); ++i) {
        const Solid& solid = built.network.solids[i];
        const bool firebox = solid.name.starts_with("tunnel") || solid.name.starts_with("riser");
        state[i] = solid.mass * solid.curve->enthalpy(firebox ? 900 : 400);
    }
    RangeWatch watch(stove, library, built);
    for (const double time : {0.0, 30.0}) {
        balance.rates(time, state, rate);
        watch.sample(time, balance);
    }
    return watch.stretched(released);
}

std::set<std::string> laws_of(const std::vector<Stretched>& all) {
    std::set<std::string> laws;
    for (const Stretched& each : all) laws.insert(each.law + ", " + each.what);
    return laws;
}

std::string listed(const std::set<std::string>& laws) {
    std::string text;
    for (const std::string& law : laws) text += law + "\n";
    return text;
}

const Stretched* find(const std::vector<Stretched>& all, std::string_view law,
                      std::string_view what) {
    for (const Stretched& each : all)
        if (each.law == law && each.what == what) return &each;
    return nullptr;
}

Stove burning() {
    Stove stove = plain_stove();
    stove.burn_rate = Table(0.0007);
    return stove;
}

/// A hot chimney, wide enough for fast flow, with nothing before or after it.
Stove chimney(double bore) {
    Stove stove;
    stove.riser.bore = bore;
    stove.riser.top = 3;
    stove.riser.lining = {{"board", 0.025}};
    stove.site.room = 340;  // no gas is too cold for its viscosity
    stove.wood_kind = "wood";
    return stove;
}

}  // namespace

TEST_SUITE("models/range_watch") {
    TEST_CASE("every law holds at both ends of its range and not beyond") {
        for (const Range* range :
             {&mitre_bend_range, &turn_under_plate_range, &low_reynolds_range, &duct_film_range,
              &duct_film_prandtl_range, &stagnation_range, &stagnation_gap_range,
              &natural_vertical_range, &natural_up_range, &air_range, &gas_radiation_range,
              &gas_radiation_path_range, &transport_range, &mixture_range, &flame_length_range,
              &carbon_monoxide_range}) {
            CAPTURE(range->law);
            CAPTURE(range->quantity);
            CHECK(range->low < range->high);
            CHECK(range->uncertainty >= 0);
            CHECK(range->uncertainty <= 1);
            CHECK(range->holds(range->low));
            CHECK(range->holds(range->high));
            CHECK_FALSE(range->holds(std::nextafter(range->low, -no_end)));
            if (std::isfinite(range->high))
                CHECK_FALSE(range->holds(std::nextafter(range->high, no_end)));
        }
    }

    TEST_CASE("a stove within all ranges reports nothing") {
        CHECK(listed(laws_of(watched(chimney(0.35)))) == "");
    }

    TEST_CASE("a narrow chimney stretches one law, that of slow openings") {
        const auto stretched = watched(chimney(0.03));
        REQUIRE(listed(laws_of(stretched)) == "openings in slow flow, Reynolds number\n");
        CHECK(stretched[0].on == "draw");
        CHECK(stretched[0].worst < low_reynolds_range.low);
        CHECK(stretched[0].share_of_burn == near(1, 1e-12));
    }

    TEST_CASE("a plate close over the riser stretches the law of the turn and no other") {
        const auto laws_at = [](double gap_over_bore) {
            Stove stove = burning();
            stove.port->width = 0.06;  // so that the film under the plate holds at either gap
            stove.burn_rate = Table(0.0006);  // and carbon monoxide burns well within its range
            stove.plate->underside = stove.riser.top + gap_over_bore * stove.riser.bore;
            return watched(stove);
        };
        auto usual = laws_of(laws_at(0.3));
        const auto close = laws_at(0.15);
        CHECK(usual.insert("turn under the plate, gap over bore").second);
        CHECK(listed(laws_of(close)) == listed(usual));
        const Stretched* turn = find(close, "turn under the plate", "gap over bore");
        REQUIRE(turn != nullptr);
        CHECK(turn->worst == near(0.15, 1e-9));  // rounding of heights
        CHECK(turn->on == "draw");
        CHECK(turn->effect == Effect::judge_with_care);
        // Its weight is a share of all losses times its uncertainty.
        CHECK(turn->weight < turn_under_plate_range.uncertainty);
        CHECK(find(laws_at(0.09), "film under the plate", "gap over bore") != nullptr);
        CHECK(find(laws_at(0.7), "turn under the plate", "gap over bore") != nullptr);
    }

    TEST_CASE("a lining above what its material is sold for wears out") {
        Library library = plain_library();
        library.materials["board"].hot_face_limit = 901;
        CHECK(find(watched(burning(), library), "board", "service temperature") == nullptr);
        library.materials["board"].hot_face_limit = 800;
        const auto stretched = watched(burning(), library);
        const Stretched* board = find(stretched, "board", "service temperature");
        REQUIRE(board != nullptr);
        CHECK(board->where == "riser lining");
        CHECK(board->high == 800);
        CHECK(board->worst == near(900, 1e-6));  // an enthalpy turned back into a temperature
        CHECK(board->on == "what wears out");
        CHECK(board->effect == Effect::judge_with_care);
        CHECK(board->weight == near(1, 1e-12));  // all the time, however many cells
    }

    TEST_CASE("a lining above its table bears on the exit gas by the heat it takes") {
        Library library = plain_library();
        library.materials["brick"].conductivity = Table({300, 901}, {1, 1});
        CHECK(find(watched(burning(), library), "brick", "tabled temperature") == nullptr);
        library.materials["brick"].conductivity = Table({300, 800}, {1, 1});
        const auto stretched = watched(burning(), library);
        const Stretched* brick = find(stretched, "brick", "tabled temperature");
        REQUIRE(brick != nullptr);
        CHECK(brick->on == "exit gas");
        // Of 10 kW, with a spread of 0.2: the tunnel at 900 K trades more than 50 W with its gas.
        CHECK(brick->weight > 0.2 * 50 / 10e3);
        const auto half = watched(burning(), library, 2 * 30 * 10e3);
        CHECK(find(half, "brick", "tabled temperature")->weight == near(brick->weight / 2, 1e-9));
    }

    TEST_CASE("bends are always slower than their law was found at") {
        const Stretched* bends = nullptr;
        const auto stretched = watched(burning());
        bends = find(stretched, "bends", "Reynolds number");
        REQUIRE(bends != nullptr);
        // Two bends and a share of everything: neither nothing nor all.
        CHECK(bends->weight > 0.01);
        CHECK(bends->weight < mitre_bend_range.uncertainty);
    }
}

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/draw_study.h"
#include "tests/models/sample_burn.h"

using namespace drawwell;
using drawwell::testing::burn_sample;

namespace {

constexpr double minute = 60;  // [s]

/// When the feed's flow first leaves that direction after a time [s]; 0: never.
double left(const Results& results, bool inward, double after) {
    const Column& flow = *results.find("feed_air_flow");
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (results.time[i] > after && (flow.values[i] > 0) != inward) return results.time[i];
    return 0;
}

/// A firebox with a short riser and no barrel, whose flue ends where the line says.
constexpr const char* plain_firebox = R"(
[feed]
mouth = "400 mm"
width = "110 mm"
depth = "110 mm"
lining = ["30 mm vermiculite_board"]
[tunnel]
width = "110 mm"
height = "110 mm"
length = "340 mm"
[riser]
bore = "125 mm"
top = "140 mm"
lining = ["25 mm aes_board"]
[burn_rate]
table = "1.2 kg/h"
[site]
outdoor = "20 °C"
room = "20 °C"
[flue.pipe]
)";

DrawStudy study(const std::string& flue) {
    const Library library = read_library();
    const Stove stove = read_stove(plain_firebox + flue, "stove", {}, library);
    return study_draw(stove, library, 60 * minute);
}

/// Steady states in which air comes down the flue and smoke out of the feed.
std::ptrdiff_t turned_states(const DrawCurve& curve, double given_off) {
    return std::count_if(curve.states.begin(), curve.states.end(), [&](const DrawState& state) {
        return state.stable && state.flow < -given_off;
    });
}

std::ptrdiff_t inward_states(const DrawCurve& curve) {
    return std::count_if(curve.states.begin(), curve.states.end(),
                         [](const DrawState& state) { return state.stable && state.flow > 0; });
}

}  // namespace

// Fitzgerald and Woods (Building and Environment 43, 2008, 1719), abstract: a heated space with a
// stack from hA to H and a second vent at hB has two steady flows where H > hB > hA. Here the
// feed's mouth is the vent, the fire hA and the flue's top H.
TEST_SUITE("models/two_directions") {
    TEST_CASE("a push that turns the draw must fall far below that before it comes back") {
        // Suction rises by 1 Pa in ten minutes, so slowly that the walls nearly follow, and falls
        // again likewise until it blows.
        const BurnOutcome burn = burn_sample(
            {"burn_rate.table=1.6 kg/h", "burn.duration=330 min",
             "site.room_suction=[[\"30 min\", \"0 Pa\"], [\"150 min\", \"12 Pa\"], [\"330 min\", "
             "\"-6 Pa\"]]"});
        const auto suction = [](double time) {
            return time < 150 * minute ? (time / minute - 30) / 10
                                       : 12 - (time / minute - 150) / 10;
        };
        const double turned = left(burn.results, true, 30 * minute);
        REQUIRE(turned > 0);
        const double back = left(burn.results, false, turned);
        REQUIRE(back > 150 * minute);
        // At two hours the draw's two curves have their tops at 9 Pa; following the walls, the
        // turned branch ends below 0 Pa. Walls lag the push by some tenths of a pascal.
        CHECK(suction(turned) > 8);
        CHECK(suction(turned) < 10);
        CHECK(suction(back) < 0.5);
        CHECK(suction(back) > -4);
        CHECK(burn.summary.energy_residual < 1e-3);
    }

    TEST_CASE("a rising flue allows both directions once the walls have followed") {
        const DrawStudy rising = study("length = \"2 m\"\ndirection = \"up\"\n");
        CHECK(inward_states(rising.held) == 1);
        CHECK(inward_states(rising.following) == 1);
        CHECK(turned_states(rising.following, rising.given_off) == 1);
        CHECK(rising.following.states.size() == 3);  // the one between is the threshold
    }

    TEST_CASE("an outlet low in the wall allows one direction only") {
        const DrawStudy low = study("length = \"300 mm\"\nrise = \"-85 mm\"\nbend = \"90 deg\"\n");
        CHECK(inward_states(low.following) == 1);
        CHECK(turned_states(low.following, low.given_off) == 0);
        CHECK(turned_states(low.held, low.given_off) == 0);
    }
}

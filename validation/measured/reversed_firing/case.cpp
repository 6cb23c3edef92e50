#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/reversed_firing";

constexpr const char* stove = R"(
[feed]
mouth = "14 in"
width = "5 1/2 in"
depth = "8 in"
lining = ["64 mm firebrick"]
foot_lining = ["64 mm firebrick"]
[tunnel]
width = "6 in"
height = "8 in"
length = "15 1/2 in"
lining = ["64 mm firebrick"]
roof = ["64 mm firebrick"]
[riser]
bore = "8 in"
top = "39 in"
lining = ["64 mm firebrick"]
[barrel]
diameter = "510 mm"
height = "750 mm"
[plate]
diameter = "520 mm"
thickness = "1.2 mm"
underside = "41 1/2 in"
[flue]
outlet = "120 mm"
[flue.wall]
length = "1.5 m"
direction = "level"
bore = "8 in"
wall = ["0.7 mm mild_steel"]
place = "outdoors"
[wood]
moisture = "16 % wet"
side = "40 mm"
length = "400 mm"
[kindling]
mass = "0.8 kg"
[load.main]
at = ["6 min", "12 min", "24 min", "36 min"]
pieces = 3
[site]
room = "18 °C"
outdoor = "5 °C"
[burn]
duration = "45 min"
)";

/// Share [-] of the first 45 minutes in which smoke comes out of the feed.
double reversed(double suction, const Library& library) {
    const BurnOutcome outcome =
        burn(Setup{stove}.with({fmt::format("site.room_suction={} Pa", suction)}), library);
    return outcome.summary.smoke_back / outcome.results.time.back();
}

/// Least suction [Pa] at lighting, in steps of a tenth, with which it stays reversed.
double turning_suction(const Library& library) {
    double suction = 0;
    while (suction < 5 && reversed(suction, library) < 0.9) suction += 0.1;
    return suction;
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE(
        "a heater with its flue through the wall draws or is fully reversed by a house's own "
        "pull") {
        const auto found = with_spread([](const Library& library) {
            return std::vector{reversed(0, library), reversed(2, library),
                               turning_suction(library)};
        });
        compare_band({name, "reversed share of the time, still house [-]", 0, 0, found[0]});
        compare_band({name, "reversed share of the time, house pulls 2 Pa [-]", 0.9, 1, found[1]});
        compare_band({name, "suction at lighting that reverses it [Pa]", 0, 5, found[2]});
        const DrawStudy hot = draw_at({stove}, 40 * 60.0);
        const auto turned = std::count_if(
            hot.following.states.begin(), hot.following.states.end(),
            [&](const DrawState& state) { return state.stable && state.flow < -hot.given_off; });
        compare({name, "reversed states of the hot stove, off one [-]",
                 std::abs(static_cast<double>(turned) - 1), 0});
    }
}

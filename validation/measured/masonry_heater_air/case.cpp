#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;
using drawwell::testing::value_at;

namespace {

constexpr auto name = "measured/masonry_heater_air";
constexpr auto no_doors = "the heaters' doors, slots and chimneys are not known and left out";

/// A heater of firebrick whose air comes over the fire through one opening, sized so that the
/// largest flow measured goes through it at 3 m/s, the middle of EN 15544's range.
constexpr const char* heater = R"(
[feed]
mouth = "360 mm"
width = "100 mm"
depth = "100 mm"
free = "100 %"
lining = ["115 mm firebrick"]
foot_lining = ["115 mm firebrick"]
[tunnel]
width = "300 mm"
height = "300 mm"
length = "350 mm"
lining = ["115 mm firebrick"]
roof = ["115 mm firebrick"]
[riser]
width = "250 mm"
depth = "250 mm"
top = "1800 mm"
lining = ["115 mm firebrick"]
[flue.channels]
length = "5 m"
direction = "level"
bore = "200 mm"
wall = ["115 mm firebrick"]
[flue.chimney]
length = "5 m"
direction = "up"
bore = "180 mm"
wall = ["115 mm brick"]
[wood]
moisture = "17 % wet"
[burn_rate]
table = "10 kg/h"
[site]
room = "18 °C"
outdoor = "5 °C"
[burn]
duration = "90 min"
)";

std::vector<double> figures(const Library& library) {
    const BurnOutcome outcome = burn({heater}, library);
    const double flow = testing::largest(outcome.results, "feed_air_flow");
    const double ratio = value_at(outcome.results, "air_ratio", 5400);
    return {flow / 1.2 * 1000, testing::largest(outcome.results, "feed_air_speed"), ratio,
            ratio * 0.036 / value_at(outcome.results, "feed_air_flow", 5400)};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a masonry heater takes as much air as was measured") {
        const auto found = with_spread(figures);
        compare_beside(
            {name, "air ratio of 10 kg/h in 36 g/s of air [-]", 2.6, found[3].value, 0.1});
        compare_band({name, "air ratio at 10 kg/h, EN 15544's range [-]", 1.95, 3.95, found[2]});
        show_band({name, "most air [l/s]", -unbounded, 30, found[0]}, no_doors);
        show_band({name, "air speed in the opening, EN 15544's range [m/s]", 2, 4, found[1]},
                  no_doors);
    }
}

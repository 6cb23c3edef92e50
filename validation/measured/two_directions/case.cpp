#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/two_directions";

/// A firebox with a riser no higher than its tunnel and no barrel, so that its flue's top alone
/// decides: fire at 0.06 m, the feed's mouth at 0.4 m.
constexpr const char* firebox = R"(
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
length = "2 m"
)";

std::vector<double> stable(const std::vector<std::string>& flue, const Library& library) {
    const DrawStudy study = draw_at(Setup{firebox}.with(flue), 3600, library);
    double inward = 0, turned = 0;
    for (const DrawState& state : study.following.states) {
        inward += state.stable && state.flow > 0;
        turned += state.stable && state.flow < -study.given_off;
    }
    return {inward, turned};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE(
        "a flue that ends over the feed's mouth allows two directions, one that ends below it "
        "one") {
        const Library& library = standard_library();
        const auto high = stable({"flue.pipe.direction=up"}, library);
        const auto just = stable({"flue.pipe.length=500 mm", "flue.pipe.direction=up"}, library);
        const auto low = stable(
            {"flue.pipe.length=300 mm", "flue.pipe.rise=-85 mm", "flue.pipe.bend=90 deg"}, library);
        compare({name, "directions with the flue's top at 2.1 m, off two [-]",
                 std::abs(high[0] + high[1] - 2), 0});
        compare({name, "directions with its top at 0.64 m, off two [-]",
                 std::abs(just[0] + just[1] - 2), 0});
        compare({name, "directions with its end at 0.06 m, off one [-]",
                 std::abs(low[0] + low[1] - 1) + (low[1] != 0), 0});
    }
}

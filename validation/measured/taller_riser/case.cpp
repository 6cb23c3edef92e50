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

constexpr auto name = "measured/taller_riser";

constexpr double foot = 0.057;  // [m] the elbow's axis

std::vector<double> figures(const Library& library) {
    struct Point {
        double flow, ratio, gas;
    };
    const auto elbow = [&](double top) {
        const BurnOutcome outcome =
            burn(elbow_stove().with(
                     {fmt::format("riser.top={} mm", 1000 * top), "burn_rate.table=0.9 kg/h"}),
                 library);
        return Point{value_at(outcome.results, "flue_gas_flow", 3600),
                     value_at(outcome.results, "air_ratio", 3600),
                     value_at(outcome.results, "riser_gas_temperature", 3600)};
    };
    const auto barrel = [&](int taller) {
        const BurnOutcome outcome =
            burn(builders_stove().with({fmt::format("riser.top={} mm", 1090 + taller),
                                        fmt::format("plate.underside={} mm", 1150 + taller),
                                        fmt::format("barrel.height={} mm", 880 + taller),
                                        "burn_rate.table=6 kg/h", "burn.duration=90 min"}),
                 library);
        return value_at(outcome.results, "flue_gas_flow", 5400);
    };
    const Point low = elbow(0.305), high = elbow(1.2);
    return {std::log(high.flow / low.flow) / std::log((1.2 - foot) / (0.305 - foot)),
            high.ratio - low.ratio, low.gas - high.gas, std::abs(barrel(600) / barrel(0) - 1)};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a taller bare riser draws more and runs cooler, and a barrel takes that back") {
        const auto found = with_spread(figures);
        compare_band({name, "exponent of flow on the riser's height [-]", 0.4, 0.6, found[0]});
        compare_band({name, "air ratio gained, 0.3 to 1.2 m [-]", 0.5, unbounded, found[1]});
        compare_band({name, "gas cooler by, 0.3 to 1.2 m [K]", 50, unbounded, found[2]});
        compare_band({name, "flow changed by 0.6 m more riser and barrel [-]", 0, 0.05, found[3]});
    }
}

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

constexpr auto name = "measured/pan_gap";

constexpr double inch = 0.0254;  // [m]

struct Pan {
    double efficiency = 0;  // [-] heat that the pan takes over what the wood gives
    double air_ratio = 0;
};

/// The elbow stove under a pan of 240 mm in a short skirt, that far over its riser.
Pan pan(double gap, const Library& library) {
    Setup setup = elbow_stove();
    setup.text += R"(
[barrel]
diameter = "260 mm"
height = "100 mm"
[plate]
diameter = "260 mm"
thickness = "1 mm"
underside = "340 mm"
[pot.pan]
diameter = "240 mm"
height = "150 mm"
water = "5 kg"
metal = "0.6 kg"
bottom = "flat"
)";
    const BurnOutcome outcome =
        burn(setup.with({fmt::format("plate.underside={:.2f} mm", 1000 * (0.305 + gap)),
                         fmt::format("barrel.height={:.2f} mm", 1000 * (0.05 + gap))}),
             library);
    return {value_at(outcome.results, "pot_heat", 3600) /
                value_at(outcome.results, "pyrolysis_rate", 3600) / 19.7e6,
            value_at(outcome.results, "air_ratio", 3600)};
}

std::vector<double> figures(const Library& library) {
    const Pan inch_gap = pan(inch, library), half = pan(inch / 2, library),
              quarter = pan(inch / 4, library);
    return {100 * (half.efficiency / inch_gap.efficiency - 1),
            100 * (quarter.efficiency / inch_gap.efficiency - 1), inch_gap.air_ratio,
            half.air_ratio, quarter.air_ratio};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE(
        "a pan nearer to an elbow stove takes more heat until the draught fails at a quarter "
        "inch") {
        const auto found = with_spread(figures);
        compare_band({name, "pan's heat at 1/2 in over that at 1 in, more by [%]", 2, 9, found[0]});
        show_band({name, "pan's heat at 1/4 in over that at 1 in, more by [%]", 6, 12, found[1]},
                  "the run burns a steady 5 kW, for which that gap has too little air");
        compare_band({name, "air ratio at 1 in, the draught holds [-]", 1, unbounded, found[2]});
        compare_band({name, "air ratio at 1/2 in, the draught holds [-]", 1, unbounded, found[3]});
        compare_band({name, "air ratio at 1/4 in, the draught fails [-]", 0, 1, found[4]});
    }
}

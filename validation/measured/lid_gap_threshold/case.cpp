#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;
using drawwell::testing::value_at;

namespace {

constexpr auto name = "measured/lid_gap_threshold";

constexpr double bore = 0.2;  // [m]

/// Air [kg/s] into the builder's stove at 6 kg/h, with a lid so far over the riser that the curtain
/// under it has that share of the bore's area; and the lid's middle [K].
std::array<double, 2> lid(double curtain, const Library& library) {
    const BurnOutcome outcome =
        burn(builders_stove().with(
                 {fmt::format("plate.underside={:.2f} mm", 1000 * (1.09 + curtain * bore / 4)),
                  "burn_rate.table=6 kg/h", "burn.duration=1 h"}),
             library);
    return {value_at(outcome.results, "feed_air_flow", 3600),
            value_at(outcome.results, "plate_temperature", 3600)};
}

std::vector<double> figures(const Library& library) {
    const auto wide = lid(2, library), one = lid(1, library), some = lid(0.44, library),
               narrow = lid(0.22, library);
    return {one[0] / wide[0], some[0] / wide[0], narrow[0] / wide[0], one[1] - wide[1],
            some[1] - one[1]};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE(
        "the gap under the lid is harmless above a curtain of the bore's area and chokes near a "
        "fifth of it") {
        const auto found = with_spread(figures);
        compare_band({name, "air at curtain 1 over that at 2 [-]", 0.85, 1, found[0]});
        compare_band({name, "air at curtain 0.44 over that at 2 [-]", 0.4, 0.85, found[1]});
        compare_band({name, "air at curtain 0.22 over that at 2 [-]", 0, 0.4, found[2]});
        compare_band({name, "lid hotter at curtain 1 than at 2 [K]", 0, unbounded, found[3]});
        compare_band({name, "lid hotter at 0.44 than at 1 [K]", 0, unbounded, found[4]});
    }
}

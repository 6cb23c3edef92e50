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

constexpr auto name = "measured/throttled_air";

struct Point {
    double air = 0, gas = 0, heat = 0;  // [-], [K], [W]
};

/// The builder's stove at 6 kg/h whose port an insert narrows to that share.
Point port(double open, const Library& library) {
    Setup setup = builders_stove();
    setup.text += "[port]\nwidth = \"175 mm\"\nheight = \"180 mm\"\n";
    const BurnOutcome outcome =
        burn(setup.with({"burn_rate.table=6 kg/h", "burn.duration=90 min",
                         fmt::format(R"(schedule.port=[["0 min", "{} %"]])", 100 * open)}),
             library);
    return {value_at(outcome.results, "air_ratio", 5400),
            testing::largest(outcome.results, "riser_gas_temperature"),
            value_at(outcome.results, "heat_release", 5400)};
}

std::vector<double> figures(const Library& library) {
    const Point wide = port(1, library), half = port(0.5, library), third = port(0.3, library);
    return {half.air / wide.air, third.air / half.air, half.gas - wide.gas, third.gas - half.gas,
            std::abs(third.heat / wide.heat - 1)};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("throttled air raises the gas and lowers the excess at the same power") {
        const auto found = with_spread(figures);
        compare_band({name, "air ratio, half port over open [-]", -unbounded, 0.95, found[0]});
        compare_band({name, "air ratio, 30 % port over half [-]", -unbounded, 0.95, found[1]});
        compare_band({name, "riser gas hotter at half port [K]", 20, unbounded, found[2]});
        compare_band({name, "hotter again at 30 % [K]", 20, unbounded, found[3]});
        compare_band({name, "heat set free, change from open to 30 % [-]", 0, 0.1, found[4]});
    }
}

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

constexpr auto name = "measured/air_ratio_over_power";

constexpr int rates[] = {2, 4, 6, 8, 10, 12};  // [kg/h] of wood

std::vector<double> figures(const Library& library) {
    double before = 1e9, cooler = 0, first = 0, out_of_order = 0, full = 0, exponent = 0;
    for (const int rate : rates) {
        const BurnOutcome outcome =
            burn(builders_stove().with(
                     {fmt::format("burn_rate.table={} kg/h", rate), "burn.duration=2 h"}),
                 library);
        const double ratio = value_at(outcome.results, "air_ratio", 7200);
        const double gas = value_at(outcome.results, "riser_gas_temperature", 7200);
        out_of_order += (ratio >= before) + (gas <= cooler);
        if (rate == 4) first = ratio;
        if (rate == 10) full = ratio;
        if (rate == 12) exponent = std::log(ratio / first) / std::log(3);
        before = ratio;
        cooler = gas;
    }
    return {out_of_order, exponent, full};
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("more fire means less excess air and hotter gas in a whole stove") {
        const auto found = with_spread(figures);
        compare(
            {name, "powers at which air ratio or gas goes the other way [-]", found[0].value, 0});
        compare_band({name, "exponent of the air ratio on the power [-]", -1.2, -0.9, found[1]});
        compare_band({name, "air ratio at 10 kg/h, EN 15544's range [-]", 1.95, 3.95, found[2]});
    }
}

#include <doctest/doctest.h>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;
using drawwell::testing::value_at;

namespace {

constexpr auto name = "measured/bench_warmth";
constexpr double minute = 60, hour = 3600;  // [s]
constexpr std::size_t bench_end = 9;        // cell of the flue's gas where the bench ends

std::vector<double> figures(const std::string& cover, const Library& library) {
    const BurnOutcome outcome =
        burn(builders_stove().with({"flue.level.length=8 m", "flue.level.wall=150 mm cob",
                                    "site.room=10 °C", "site.outdoor=1 °C", "burn.duration=16 h",
                                    "burn.output_every=60 s", "schedule.feed_cover=" + cover}),
             library);
    const auto at = [&](const char* column, double time) {
        return celsius(value_at(outcome.results, column, time, bench_end));
    };
    return {at("flue_gas_temperature", 2 * minute), at("flue_gas_temperature", 15 * minute),
            at("flue_gas_temperature", 16 * hour),
            at("flue_gas_temperature", 15 * minute) - at("flue_wall_temperature", 15 * minute)};
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE(
        "gas behind a mass bench is as warm as a builder read at first and half a day later") {
        const auto open =
            with_spread([](const Library& library) { return figures("off", library); });
        const auto covered = with_spread([](const Library& library) {
            return figures(R"([["0 min", "off"], ["200 min", "on"]])", library);
        });
        compare_band({name, "gas 2 min after lighting [degC]", 36, 96, open[0]});
        compare_band({name, "gas 15 min after lighting [degC]", 69, 129, open[1]});
        compare_band(
            {name, "gas over its pipe's wall, 15 min after lighting [K]", 45, 105, open[3]});
        show_band(
            {name, "gas 13 h after the fire, feed open [degC]", 43, unbounded, open[2]},
            "cold air goes on through the bench; the builder's bench and shutters are not known");
        show_band({name, "gas 13 h after the fire, feed covered [degC]", 43, unbounded, covered[2]},
                  "masonry beyond 150 mm is left out; the builder's bench is not known");
    }
}

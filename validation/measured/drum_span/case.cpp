#include <doctest/doctest.h>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;
using drawwell::testing::value_at;

namespace {

constexpr auto name = "measured/drum_span";
constexpr auto even = "plug flow gives off heat over the whole height, too evenly";
constexpr auto more_wood = "the lid is as hot only with more wood";

/// Lid's middle, drum at half height and foot [degC] after two hours of a steady fire.
std::vector<double> span(const std::string& rate, const Library& library) {
    const BurnOutcome outcome = burn(
        builders_stove().with({"barrel.height=1 m", "plate.underside=1.27 m", "riser.top=1.203 m",
                               "burn_rate.table=" + rate, "burn.duration=2 h"}),
        library);
    const std::size_t foot = outcome.results.find("barrel_temperature")->width - 1;
    const auto at = [&](const char* column, std::size_t cell) {
        return celsius(value_at(outcome.results, column, 7200, cell));
    };
    return {at("plate_temperature", 0), at("barrel_temperature", foot / 2),
            at("barrel_temperature", foot)};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a drum a metre tall is hottest at the lid and cools towards its foot as quoted") {
        const auto hard =
            with_spread([](const Library& library) { return span("9 kg/h", library); });
        const auto usual =
            with_spread([](const Library& library) { return span("5 kg/h", library); });
        const auto shape = with_spread([](const Library& library) {
            const auto at = span("9 kg/h", library);
            return std::vector{(at[1] - 20) / (at[0] - 20), (at[2] - 20) / (at[0] - 20)};
        });
        compare({name, "places that are not cooler than the one above [-]",
                 static_cast<double>((hard[1].value >= hard[0].value) +
                                     (hard[2].value >= hard[1].value)),
                 0});
        show_band({name, "half height over lid, both over the room [-]", 0.41, 0.61, shape[0]},
                  even);
        show_band({name, "foot over lid, both over the room [-]", 0.17, 0.37, shape[1]}, even);
        show_band({name, "lid at 9 kg/h [degC]", 500, 700, hard[0]}, more_wood);
        show_band({name, "half height at 9 kg/h [degC]", 265, 365, hard[1]}, even);
        show_band({name, "foot at 9 kg/h [degC]", 145, 205, hard[2]}, even);
        show_band({name, "lid at 5 kg/h [degC]", 500, 700, usual[0]}, more_wood);
    }
}

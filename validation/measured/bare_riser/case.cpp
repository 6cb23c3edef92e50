#include <doctest/doctest.h>

#include <algorithm>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/bare_riser";

/// Hottest gas into the flue, drum's side at half height [degC].
std::vector<double> figures(const Setup& stove, const Library& library) {
    const BurnOutcome outcome =
        burn(stove.with({"riser.lining=3 mm mild_steel", "flue.level.bore=150 mm",
                         "flue.stack.bore=150 mm"}),
             library);
    const Column& side = *outcome.results.find("barrel_temperature");
    double most = 0;
    for (std::size_t i = 0; i < outcome.results.time.size(); ++i)
        most = std::max(most, side.values[i * side.width + side.width / 2]);
    return {celsius(outcome.summary.exit_gas_max), celsius(most)};
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("without insulation round the riser and without a mass the flue takes the heat") {
        const auto found = [](const Setup& stove) {
            return with_spread([&](const Library& library) { return figures(stove, library); });
        };
        const auto sparingly = found(builders_stove_fed_sparingly()),
                   fully = found(builders_stove());
        compare_band({name, "gas into the flue [degC]", 260, 372, between(sparingly[0], fully[0])});
        show_band({name, "drum side [degC]", 93, 149, between(sparingly[1], fully[1])},
                  "the builder's geometry is not known; fire that climbs the feed is left out");
    }
}

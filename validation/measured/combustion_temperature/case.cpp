#include <doctest/doctest.h>

#include <algorithm>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;
using drawwell::testing::largest;

namespace {

constexpr auto name = "measured/combustion_temperature";

std::vector<double> figures(const Setup& stove, const Library& library) {
    const BurnOutcome outcome = burn(stove, library);
    const Column& tunnel = *outcome.results.find("tunnel_gas_temperature");
    double quickly = outcome.results.time.back();
    for (std::size_t i = outcome.results.time.size(); i-- > 0;)
        for (std::size_t c = 0; c < tunnel.width; ++c)
            if (celsius(tunnel.values[i * tunnel.width + c]) >= 593)
                quickly = outcome.results.time[i];
    return {celsius(std::max(largest(outcome.results, "tunnel_gas_temperature"),
                             largest(outcome.results, "riser_gas_temperature"))),
            quickly / 60};
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("the hottest gas is soon as hot as builders aim at") {
        const auto found = [](const Setup& stove) {
            return with_spread([&](const Library& library) { return figures(stove, library); });
        };
        const auto sparingly = found(builders_stove_fed_sparingly()),
                   fully = found(builders_stove());
        compare_band(
            {name, "hottest mixed gas [degC]", 816, 1427, between(sparingly[0], fully[0])});
        compare_band({name, "over 593 degC, feed kept full, after [min]", 0, 30, fully[1]});
        show_band({name, "over 593 degC, fed sparingly, after [min]", 0, 30, sparingly[1]},
                  "fed sparingly under five metres of chimney it takes too much air");
    }
}

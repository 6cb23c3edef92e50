#include <doctest/doctest.h>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/cool_exhaust";
constexpr auto bench =
    "what condenses in a cold bench is left out; its length and firing are not known";

/// Gas [degC] behind the drum, behind ten metres of bench and at the flue's top, means while it
/// burns.
std::vector<double> exhaust(const Setup& stove, const Library& library) {
    const BurnOutcome outcome =
        burn(stove.with({"flue.level.length=10 m", "flue.level.wall=150 mm cob"}), library);
    const auto mean = [&](const char* column, std::size_t cell) {
        return celsius(testing::mean_between(outcome.results, column, 1800, 9000, cell));
    };
    return {mean("outlet_gas_temperature", 0), mean("flue_gas_temperature", 9),
            mean("flue_top_temperature", 0)};
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("a long bench cools the exhaust far below that of a stove without one") {
        const auto found = [](const Setup& stove) {
            return with_spread([&](const Library& library) { return exhaust(stove, library); });
        };
        const auto sparingly = found(builders_stove_fed_sparingly()),
                   fully = found(builders_stove());
        compare({name, "places that are not cooler than the one before [-]",
                 static_cast<double>((fully[1].value >= fully[0].value) +
                                     (fully[2].value >= fully[1].value)),
                 0});
        compare_band({name,
                      "bench and flue take of the drum's gas [K]",
                      100,
                      unbounded,
                      {fully[0].value - fully[2].value, fully[2].spread}});
        show_band({name, "gas leaving the drum, as of a stove without mass [degC]", 149, 316,
                   between(sparingly[0], fully[0])},
                  "the fire behind the reading is not known");
        show_band({name, "chimney's base, behind 10 m of bench [degC]", 56, 76,
                   between(sparingly[1], fully[1])},
                  bench);
        show_band({name, "gas at the top, behind 10 m of bench [degC]", 27, 38,
                   between(sparingly[2], fully[2])},
                  bench);
    }
}

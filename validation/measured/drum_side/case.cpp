#include <doctest/doctest.h>

#include <algorithm>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/drum_side";

/// Largest temperature [degC] of the drum's side at half its height.
double side_peak(const Setup& stove, const std::string& moisture, const Library& library) {
    const BurnOutcome outcome =
        burn(stove.with({"riser.lining=64 mm firebrick, 50 mm perlite_loose",
                         "wood.moisture=" + moisture}),
             library);
    const Column& side = *outcome.results.find("barrel_temperature");
    double most = 0;
    for (std::size_t i = 0; i < outcome.results.time.size(); ++i)
        most = std::max(most, side.values[i * side.width + side.width / 2]);
    return celsius(most);
}

Figure side(const std::string& moisture) {
    const auto found = with_spread([&](const Library& library) {
        return std::vector{side_peak(builders_stove_fed_sparingly(), moisture, library),
                           side_peak(builders_stove(), moisture, library)};
    });
    return between(found[0], found[1]);
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("the side of an eight-inch system's drum gets as hot as a builder read") {
        compare_band({name, "drum side, dry [degC]", 190, 302, side("16 % wet")});
        show_band({name, "drum side, wet; here the wood alone [degC]", 79, 191, side("35 % wet")},
                  "water in masonry is left out, wet wood stands in for it");
    }
}

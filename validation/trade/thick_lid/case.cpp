#include <doctest/doctest.h>

#include "validation/compare.h"
#include "validation/trade/low_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "trade/thick_lid";

std::vector<double> figures(const Library& library) {
    const Summary lid =
        burn(low_stove().with({"plate.thickness=8 mm", "plate.material=mild_steel"}), library)
            .summary;
    return {1000 * lid.plate_bow_low.value_or(0), 1000 * lid.plate_bow_high.value_or(0)};
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("a lid of 8 mm heated in its middle dishes rather than staying flat") {
        const auto found = with_spread(figures);
        // Negative: its middle is lower than its rim.
        compare_band({name, "bow in a rim that can't grow [mm]", -unbounded, -0.5, found[1]});
        show_band({name, "bow of a lid that slides on its rim [mm]", -unbounded, -0.5, found[0]},
                  "one side of the band; required of the other, the rigid rim");
    }
}

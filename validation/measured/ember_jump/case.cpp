#include <doctest/doctest.h>

#include <algorithm>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/ember_jump";

/// Largest rise [K] of the lid's middle within ten minutes, once there are embers.
double jump(const Library& library) {
    const BurnOutcome outcome =
        burn(builders_stove().with({"riser.bore=210 mm", "burn.duration=2 h"}), library);
    const Column& lid = *outcome.results.find("plate_temperature");
    const Column& embers = *outcome.results.find("char_left");
    constexpr std::size_t ten_minutes = 20;  // samples
    double most = 0;
    for (std::size_t i = 0; i + ten_minutes < outcome.results.time.size(); ++i)
        if (embers.values[i] > 0.1)  // [kg] a layer in the hearth
            most = std::max(most,
                            lid.values[(i + ten_minutes) * lid.width] - lid.values[i * lid.width]);
    return most;
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("over a bed of embers the lid jumps within minutes") {
        const auto found =
            with_spread([](const Library& library) { return std::vector{jump(library)}; });
        compare_band({name, "lid's rise within 10 min [K]", 56, unbounded, found[0]});
    }
}

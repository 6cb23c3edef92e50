#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/spill_by_fan";

/// Suction [Pa] in the room at which smoke first comes out of the feed, raised by a quarter of a
/// pascal each minute over dying embers.
double spills_at(const Library& library) {
    const BurnOutcome outcome = burn(
        builders_stove().with({"flue.level.length=300 mm", "flue.stack.length=4.5 m",
                               "flue.stack.wall=twin_wall", "burn.duration=290 min",
                               R"(site.room_suction=[["210 min", "0 Pa"], ["290 min", "20 Pa"]])"}),
        library);
    const double first = outcome.summary.smoke_back_first.value_or(290 * 60.0);
    return (first / 60 - 210) / 4;
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("a fan makes a dying fire spill near the ten pascals measured on fireplaces") {
        const auto found =
            with_spread([](const Library& library) { return std::vector{spills_at(library)}; });
        compare_band({name, "suction at which smoke comes back, embers [Pa]", 7, 13, found[0]});
        compare_band({name, "the same, over the limit for houses [Pa]", 5, unbounded, found[0]});
    }
}

#include <doctest/doctest.h>

#include "models/laws/losses.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/area_changes";

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("entries, exits and abrupt changes of section lose what handbooks give") {
        compare_beside(
            {name, "Idelchik, Crane, Blevins, flush entry", 0.50, entrance_loss(), 1e-9});
        compare_beside({name, "Miller, flush entry", 0.51, entrance_loss(), 0.14});
        compare_beside({name, "Rennels, flush entry", 0.57, entrance_loss(), 0.14});
        compare_beside({name, "exit into a room", 1.0, exit_loss(), 1e-9});
        compare_beside(
            {name, "Borda and Carnot, half the bore", 0.5625, sudden_expansion_loss(0.25), 1e-9});
        compare_beside(
            {name, "Crane, narrowing from 3 to 2", 0.2778, sudden_contraction_loss(4.0 / 9), 1e-3});
        compare_beside({name, "Idelchik, narrowing to 0.4 of the bore", 0.42,
                        sudden_contraction_loss(0.16), 1e-9});
        compare_beside({name, "Hooper, the same", 0.5113, sudden_contraction_loss(0.16), 0.25});
        compare_beside({name, "Rennels, the same", 0.5301, sudden_contraction_loss(0.16), 0.25});
    }
}

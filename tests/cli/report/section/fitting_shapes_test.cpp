#include "cli/report/section/fitting_shapes.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "cli/report/section/geometry.h"
#include "tests/cli/report/sheet/sheet_stoves.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

struct Bounds {
    double left = 1e9, right = -1e9, low = 1e9, high = -1e9;
};

Bounds bounds_of(const Stove& stove, std::string_view name) {
    Bounds all;
    for (const CutShape& shape : fitting_shapes(stove))
        if (shape.name == name)
            for (const FlatPoint& point : shape.points) {
                all.left = std::min(all.left, point.x);
                all.right = std::max(all.right, point.x);
                all.low = std::min(all.low, point.y);
                all.high = std::max(all.high, point.y);
            }
    return all;
}

}  // namespace

TEST_SUITE("cli/report/section/fitting_shapes") {
    TEST_CASE("a slot of side air has its width and height, its middle where the file says") {
        const Stove stove = sample_stove("allotment-kitchen");
        const SideAir& slot = stove.side_air.at(0);
        const Bounds seen = bounds_of(stove, "side air, " + slot.name);
        CHECK(seen.high - seen.low == doctest::Approx(slot.slot_height));
        CHECK((seen.high + seen.low) / 2 == doctest::Approx(slot.height));
        CHECK(seen.right - seen.left == doctest::Approx(slot.slot_width));
    }

    TEST_CASE("pots stand on the plate, an oven tube goes through the barrel at its height") {
        const Stove stove = sample_stove("workshop-kitchen");
        const double top = stove.plate->underside + stove.plate->thickness;
        for (const Fitting& fitting : stove.fittings) {
            if (const auto* pot = std::get_if<Pot>(&fitting)) {
                const Bounds seen = bounds_of(stove, "pot, " + pot->name);
                CHECK(seen.low == doctest::Approx(top));
                CHECK(seen.high - seen.low == doctest::Approx(pot->height));
                CHECK(seen.right - seen.left == doctest::Approx(pot->diameter));
            }
            if (const auto* oven = std::get_if<OvenTube>(&fitting)) {
                const Bounds seen = bounds_of(stove, "oven tube, " + oven->name);
                CHECK((seen.low + seen.high) / 2 == doctest::Approx(oven->height));
                // The chord beside the riser, as the network has it.
                CHECK(seen.right - seen.left == doctest::Approx(oven_length(stove)));
                CHECK(oven_length(stove) < stove.barrel->diameter);
            }
        }
    }
}

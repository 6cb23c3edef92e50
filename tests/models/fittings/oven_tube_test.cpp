#include "models/fittings/oven_tube.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "models/burn.h"
#include "tests/models/fittings/fitted_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;
using constants::pi;

namespace {

OvenTube oven() {
    OvenTube tube;
    tube.name = "bread";
    tube.bore = 0.09;
    tube.height = 0.5;
    tube.wall = {{"sheet", 0.0015}};
    tube.food = 0.5;
    tube.food_water = 0.4;
    tube.door_gap = 2e-4;
    return tube;
}

struct Bakery : FittedWorkshop {
    explicit Bakery(const std::vector<OvenTube>& tubes)
        : FittedWorkshop(fitted_stove<OvenTube>(tubes)) {}
    const PassageLaw& law() const { return *builder.network.passages[*builder.layout.annulus].law; }
    const GasPassageShape& shape() const { return static_cast<const GasPassage&>(law()).shape(); }
    /// Room for the gas round the riser [m3].
    double room() const {
        double sum = 0;
        for (const GasCellShape& cell : shape().cells) sum += cell.area * cell.length;
        return sum;
    }
    double loss(double flow) const {
        return Crossed(law(), flow, 600, 600, *builder.gas.model, builder.network.solids.size(),
                       builder.network.settings)
            .crossing.loss;
    }
};

BurnOutcome bake(const OvenTube& tube) {
    Stove stove = fitted_stove<OvenTube>({tube});
    stove.heat_source = Table(15e3);
    stove.burn.duration = 3600;
    return run_burn(stove, plain_library());
}

}  // namespace

TEST_SUITE("models/fittings/oven_tube") {
    TEST_CASE("the tube takes its own volume from the gas, and the narrow place costs pressure") {
        const Bakery without({}), with({oven()});
        const double outer = 0.09 / 2 + 0.0015;
        // By hand: skin 88.5 mm, barrel 198.8 mm, so 143.65 mm out, a chord of 274.8 mm.
        const double length = oven_tube_length(0.0885, 0.1988);
        CHECK(length == near(0.2748, 1e-3));
        CHECK(without.room() - with.room() == near(pi * outer * outer * length, 1e-6));
        CHECK(with.loss(0.01) > without.loss(0.01));
        CHECK(with.loss(-0.01) < without.loss(-0.01));
        double faces = 0;
        for (const GasCellShape& cell : with.shape().cells)
            for (const WallFace& face : cell.faces)
                if (with.builder.network.solids[face.solid].name.starts_with("oven_tube"))
                    faces += face.area;
        CHECK(faces == near(2 * pi * outer * length, 1e-6));
    }

    TEST_CASE("higher up it bakes hotter, and a loaf is through before a heavy roast") {
        OvenTube low = oven(), high = oven(), roast = oven();
        low.height = 0.4;
        high.height = 0.6;
        roast.food = 3;
        const BurnOutcome low_burn = bake(low), high_burn = bake(high);
        CHECK(*answer(high_burn, "air_most") > *answer(low_burn, "air_most") + 5);
        CHECK(low_burn.summary.energy_residual < 1e-3);
        CHECK(high_burn.summary.energy_residual < 1e-3);
        const auto loaf = answer(bake(oven()), "food_through");
        REQUIRE(loaf);
        const auto heavy = answer(bake(roast), "food_through");
        CHECK((!heavy || *heavy > *loaf));
    }

    TEST_CASE("a door left ajar costs heat") {
        OvenTube ajar = oven();
        ajar.door_gap = 4e-3;
        CHECK(*answer(bake(ajar), "air_most") < *answer(bake(oven()), "air_most") - 1);
    }

    TEST_CASE("moist food stays near the boiling point, dry food follows the oven") {
        OvenTube dry = oven(), moist = oven();
        dry.food_water = 0;
        const auto hottest = [](const BurnOutcome& outcome) {
            const Column& column = *outcome.results.find("oven_food_temperature");
            return *std::max_element(column.values.begin(), column.values.end());
        };
        CHECK(hottest(bake(moist)) < 375.5);
        CHECK(hottest(bake(dry)) > 400);
    }

    TEST_CASE("a tube that does not fit is refused with its reason") {
        const Stove stove = plain_stove();
        CHECK(problems(oven(), stove).empty());
        OvenTube wide = oven(), low = oven();
        wide.bore = 0.12;
        low.height = 0.2;
        CHECK(problems(wide, stove).size() == 1);
        CHECK(problems(low, stove).size() == 1);
        Stove bare = plain_stove();
        bare.barrel.reset();
        CHECK(problems(oven(), bare).size() == 1);
    }
}

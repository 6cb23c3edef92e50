#include "models/fittings/pot.h"

#include <doctest/doctest.h>

#include "models/burn.h"
#include "models/laws/water.h"
#include "tests/models/fittings/fitted_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;
using constants::pi;

namespace {

Pot kettle() {
    Pot pot;
    pot.name = "kettle";
    pot.diameter = 0.2;
    pot.height = 0.12;
    pot.water = 2;
    pot.metal = 1;
    pot.bottom = "ordinary";
    return pot;
}

/// A plate with its pots on.
struct Kitchen : FittedWorkshop {
    explicit Kitchen(const std::vector<Pot>& pots) : FittedWorkshop(fitted_stove<Pot>(pots)) {}
    /// Conductance [W/K] from the plate to a solid of that name.
    double into(std::string_view name) const {
        double sum = 0;
        for (const ConductionLink& link : builder.network.links)
            if (builder.network.solids[index(link.b)].name == name) sum += 1 / link.contact;
        return sum;
    }
    /// Loss [W] by a face of one solid at a temperature [K].
    double loss(std::string_view name, double temperature) const {
        const OutsideFace& outside = *face(name);
        double flux = 0;
        outside.flux(0, std::span(&temperature, 1), std::span(&flux, 1));
        return flux * outside.area[0];
    }
};

}  // namespace

TEST_SUITE("models/fittings/pot") {
    TEST_CASE("a disc covers of all rings together its own area, wherever it stands") {
        const std::vector<double> edge{0, 0.03, 0.06, 0.1, 0.14, 0.2, 0.3};
        for (const double off_centre : {0.0, 0.05, 0.1, 0.19}) {
            double area = 0;
            for (std::size_t i = 0; i + 1 < edge.size(); ++i)
                area += share_under(edge[i], edge[i + 1], 0.1, off_centre) * pi *
                        (edge[i + 1] * edge[i + 1] - edge[i] * edge[i]);
            CHECK(area == near(pi * 0.01, 0.01));  // the midpoint rule at the arcs' ends
        }
        CHECK(share_under(0, 0.05, 0.1, 0) == 1);
        CHECK(share_under(0.11, 0.2, 0.1, 0) == 0);
    }

    TEST_CASE("a boiling pot on a plate of 250 degC takes about a kilowatt") {
        // A 200 mm pot, 250 W/(m2 K) across the gap, 1 mm of stainless and 3000 W/(m2 K) of water:
        // 873 W at 200 and 1262 W at 300 W/(m2 K) by hand, so between them.
        const Kitchen kitchen({kettle()});
        const double heat = kitchen.into("pot.kettle") * 150;
        CHECK(heat > 1000);
        CHECK(heat < 1120);
        Pot flat = kettle(), dented = kettle();
        flat.bottom = "flat";
        dented.bottom = "dented";
        CHECK(Kitchen({flat}).into("pot.kettle") > 1.5 * kitchen.into("pot.kettle"));
        CHECK(Kitchen({dented}).into("pot.kettle") < 0.5 * kitchen.into("pot.kettle"));
    }

    TEST_CASE("what stands on the plate no longer faces the room") {
        Pot stew = kettle();
        stew.name = "stew";
        stew.diameter = 0.15;
        stew.off_centre = 0.12;
        const double bare = sum_of(Kitchen({}).face("plate")->area);
        CHECK(bare - sum_of(Kitchen({kettle()}).face("plate")->area) == near(pi * 0.01, 0.01));
        CHECK(bare - sum_of(Kitchen({stew}).face("plate")->area) ==
              near(pi / 4 * 0.15 * 0.15, 0.01));
    }

    TEST_CASE("a lid keeps the vapour in until the water boils") {
        Pot open = kettle();
        open.open = true;
        const Kitchen lid({kettle()}), none({open});
        CHECK(lid.loss("pot.kettle.steam", 365) == 0);
        // Open water at 92 degC in still air loses 5 to 15 kW/m2: from memory.
        CHECK(none.loss("pot.kettle.steam", 365) > 5e3 * pi * 0.01);
        CHECK(none.loss("pot.kettle.steam", 365) < 15e3 * pi * 0.01);
        CHECK(lid.loss("pot.kettle.steam", 375) > 1000);
    }

    TEST_CASE("a kettle boils, the sooner the less is in it, and the books close") {
        const auto burn = [](double water) {
            Pot pot = kettle();
            pot.water = water;
            Stove stove = fitted_stove<Pot>({pot});
            stove.heat_source = Table(12e3);
            stove.burn.duration = 3600;
            return run_burn(stove, plain_library());
        };
        const BurnOutcome little = burn(0.5), much = burn(2);
        CHECK(much.summary.energy_residual < 1e-3);
        const auto answer = [](const BurnOutcome& outcome, std::size_t i) {
            REQUIRE(outcome.summary.fittings.size() == 3);
            return outcome.summary.fittings[i].value;
        };
        REQUIRE(answer(little, 0));
        REQUIRE(answer(much, 0));
        CHECK(*answer(little, 0) < *answer(much, 0));
        CHECK(*answer(much, 1) > 0);
        // From 20 to 100 degC, and what boiled off, is the least that it took.
        const double least =
            80 * (2 * water_heat_capacity + 480) + *answer(much, 1) * vaporisation_heat;
        CHECK(*answer(much, 2) > least);
        CHECK(*answer(much, 2) < 1.5 * least);
    }

    TEST_CASE("a pot over the edge, or without a plate, is no pot") {
        Pot far = kettle();
        far.off_centre = 0.15;
        CHECK(problems(far, plain_stove()).size() == 1);
        CHECK(problems(kettle(), plain_stove()).empty());
        Stove bare = plain_stove();
        bare.plate.reset();
        CHECK(problems(kettle(), bare).size() == 1);
    }
}

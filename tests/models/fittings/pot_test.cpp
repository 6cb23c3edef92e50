#include "models/fittings/pot.h"

#include <doctest/doctest.h>

#include <algorithm>

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

    TEST_CASE("a pot takes from the plate only while it is put on, and the plate is bare else") {
        Pot pot = kettle();
        pot.put_on = {600, 1800};
        pot.taken_off = {1200};
        const Kitchen kitchen({pot});
        const double bare = sum_of(Kitchen({}).face("plate")->area);
        const OutsideFace* under = kitchen.face("plate under pot.kettle");
        REQUIRE(under);
        CHECK(sum_of(under->area) + sum_of(kitchen.face("plate")->area) == near(bare, 1e-9));
        const std::vector<double> warm(under->solids.size(), 500);
        std::vector<double> flux(warm.size());
        for (const double time : {0.0, 599.0, 600.0, 1199.0, 1200.0, 1800.0}) {
            const double there = (time >= 600 && time < 1200) || time >= 1800 ? 1 : 0;
            under->flux(time, warm, flux);
            CHECK((flux[0] > 0) == (there == 0));
            for (const ConductionLink& link : kitchen.builder.network.links)
                if (kitchen.builder.network.solids[index(link.b)].name == "pot.kettle")
                    CHECK(link.share(time, warm) == there);
        }
    }

    TEST_CASE("a kettle put on later boils as long after that, and cools once it is off") {
        Stove stove = fitted_stove<Pot>({kettle()});
        stove.heat_source = Table(12e3);
        stove.burn.duration = 7200;
        Pot& pot = std::get<Pot>(stove.fittings.front());
        pot.put_on = {1800};
        pot.taken_off = {5000};
        const BurnOutcome outcome = run_burn(stove, plain_library());
        CHECK(outcome.summary.energy_residual < 1e-3);
        const auto& water = outcome.results.find("pot_temperature")->values;
        const auto& heat = outcome.results.find("pot_heat")->values;
        const auto row = [&](double time) {
            std::size_t i = 0;
            while (outcome.results.time[i] < time) ++i;
            return i;
        };
        CHECK(water[row(1770)] == near(293.15, 1e-9));
        CHECK(water[row(1830)] > 294);
        CHECK(heat[row(1770)] == 0);
        CHECK(heat[row(4980)] > 300);
        CHECK(heat[row(5040)] == 0);
        CHECK(water[row(7200)] < water[row(5000)] - 5);
        REQUIRE(outcome.summary.fittings[0].value);
        // On a plate that is hot already.
        CHECK(*outcome.summary.fittings[0].value < 3200);
        CHECK(water[row(1800 + *outcome.summary.fittings[0].value)] > 372);
    }

    TEST_CASE("a pot that nobody tops up boils dry, gives off its water, and then gets hot") {
        Pot pot = kettle();
        pot.water = 0.4;
        pot.topped_up = false;
        Stove stove = fitted_stove<Pot>({pot});
        stove.heat_source = Table(12e3);
        stove.burn.duration = 3 * 3600;
        const BurnOutcome outcome = run_burn(stove, plain_library());
        CHECK(outcome.summary.energy_residual < 1e-3);
        const auto& told = outcome.summary.fittings;
        REQUIRE(told.size() == 5);
        REQUIRE(told[3].value);
        // Summed from samples each half minute, over an end that comes at once.
        CHECK(*told[1].value == near(0.4, 0.04));
        CHECK(*told[0].value < *told[3].value);
        CHECK(*told[4].value > 373 + 30);
        const auto& left = outcome.results.find("pot_water")->values;
        CHECK(left.front() == near(0.4, 1e-9));
        CHECK(left.back() < 1e-3);
        for (std::size_t i = 1; i < left.size(); ++i) CHECK(left[i] <= left[i - 1] + 1e-5);
        // Topped up it stays at the boil.
        std::get<Pot>(stove.fittings.front()).topped_up = true;
        const BurnOutcome topped = run_burn(stove, plain_library());
        const auto& water = topped.results.find("pot_temperature")->values;
        CHECK(*std::max_element(water.begin(), water.end()) < 375);
    }

    TEST_CASE("the same pot with or without topping up is as warm until it boils") {
        Pot pot = kettle();
        Stove stove = fitted_stove<Pot>({pot});
        stove.heat_source = Table(12e3);
        stove.burn.duration = 900;
        const auto warmth = [&](bool topped_up) {
            std::get<Pot>(stove.fittings.front()).topped_up = topped_up;
            return run_burn(stove, plain_library()).results.find("pot_temperature")->values.back();
        };
        CHECK(warmth(true) < 370);
        // Metal ahead of the water by some kelvin, with a seventeenth of the heat.
        CHECK(warmth(true) == near(warmth(false), 0.005));
    }

    TEST_CASE("over a hole the pot's bottom takes gas and flame in place of the plate's middle") {
        Stove stove = fitted_stove<Pot>({kettle()});
        stove.plate->hole = 0.16;
        const FittedWorkshop shop(stove);
        const Layout& layout = shop.builder.layout;
        REQUIRE(layout.hole_rings > 0);
        CHECK(layout.plate_edge[layout.hole_rings] == near(0.08, 1e-9));
        CHECK(shop.mass("pot.kettle.bottom") == near(pot_bottom_mass * pi * 0.0064, 1e-9));
        // No heat goes from the pot's bottom to the plate round it, all of it to the water.
        const SolidId last = layout.plate.solids[layout.hole_rings - 1];
        for (const ConductionLink& link : shop.builder.network.links)
            if (link.a == last || link.b == last)
                CHECK(shop.builder.network.solids[index(link.b)].name == "pot.kettle");
        const PassageLaw& law = *shop.builder.network.passages[*layout.turn].law;
        CHECK(law.touches().front().solid == index(layout.plate.solids.front()));

        const auto boils = [](const Stove& kitchen) {
            Stove burning = kitchen;
            burning.heat_source = Table(12e3);
            burning.burn.duration = 3600;
            const BurnOutcome outcome = run_burn(burning, plain_library());
            CHECK(outcome.summary.energy_residual < 1e-3);
            REQUIRE(outcome.summary.fittings[0].value);
            return *outcome.summary.fittings[0].value;
        };
        CHECK(boils(stove) < 0.95 * boils(fitted_stove<Pot>({kettle()})));
    }

    TEST_CASE("a pot can't leave a hole that it covers, nor stand in turns out of turn") {
        Stove stove = fitted_stove<Pot>({kettle()});
        stove.plate->hole = 0.16;
        CHECK(pot_over_hole(stove));
        Pot& pot = std::get<Pot>(stove.fittings.front());
        pot.taken_off = {600};
        CHECK(problems(pot, stove).size() == 1);
        stove.plate->hole_cover = 0.005;
        CHECK_FALSE(pot_over_hole(stove));
        CHECK(problems(pot, stove).empty());
        pot.taken_off = {600, 900};
        CHECK(problems(pot, stove).size() == 1);
        pot.taken_off.clear();
        stove.plate->hole_cover.reset();
        pot.off_centre = 0.03;
        CHECK_FALSE(pot_over_hole(stove));
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

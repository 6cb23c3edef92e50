#include "models/components/duct_shape.h"

#include <doctest/doctest.h>

#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;

TEST_SUITE("models/components/duct_shape") {
    TEST_CASE("a round duct is as wide as its bore") {
        const DuctSection round = round_section(0.2);
        CHECK(round.area == near(0.0314159265, 1e-8));
        CHECK(4 * round.area / round.perimeter == near(round.hydraulic_diameter, 1e-12));
        CHECK(round.equivalent_radius() == near(0.1, 1e-12));
        CHECK(round.laminar_constant == 64);
        CHECK(round.beam_length == near(0.19, 1e-12));
    }

    TEST_CASE("a square duct is hydraulically as wide as its side, a slot twice its gap") {
        const DuctSection square = rectangular_section(0.2, 0.2);
        CHECK(square.hydraulic_diameter == near(0.2, 1e-12));
        CHECK(square.beam_length == near(3.6 * 0.2 / 4, 1e-12));
        const DuctSection slot = rectangular_section(10, 0.01);
        CHECK(slot.hydraulic_diameter == near(0.02, 2e-3));
        CHECK(slot.laminar_constant > 95);
        const DuctSection turned = rectangular_section(0.01, 10);
        CHECK(turned.laminar_constant == near(slot.laminar_constant, 1e-9));
    }

    TEST_CASE("an octagon lies between the circle in it and the square round it") {
        const DuctSection eight = octagonal_section(0.2), round = round_section(0.2),
                          square = rectangular_section(0.2, 0.2);
        // 2 (sqrt 2 - 1) d^2 and 8 (sqrt 2 - 1) d: geometry.
        CHECK(eight.area == near(0.828427 * 0.04, 1e-6));
        CHECK(eight.perimeter == near(3.313708 * 0.2, 1e-6));
        CHECK(4 * eight.area / eight.perimeter == near(eight.hydraulic_diameter, 1e-12));
        for (double DuctSection::*figure : {&DuctSection::area, &DuctSection::perimeter}) {
            CHECK(eight.*figure > round.*figure);
            CHECK(eight.*figure < square.*figure);
        }
        CHECK(eight.laminar_constant < round.laminar_constant);
        CHECK(eight.laminar_constant > square.laminar_constant);
        CHECK(eight.beam_length == near(0.18, 1e-9));  // 0.9 of 4 A/P
        CHECK(eight.equal_bore() > 0.2);
        CHECK(round_section(eight.equal_bore()).area == near(eight.area, 1e-12));
    }

    TEST_CASE("the riser is round, octagonal or of width and depth") {
        Riser riser;
        riser.bore = 0.15;
        CHECK(riser_section(riser).area == near(round_section(0.15).area, 1e-12));
        riser.octagonal = true;
        CHECK(riser_section(riser).area == near(octagonal_section(0.15).area, 1e-12));
        riser.bore = 0;
        riser.width = 0.3;
        riser.depth = 0.1;
        CHECK(riser_section(riser).area == near(0.03, 1e-12));
    }

    TEST_CASE("an opening costs its loss and nothing else") {
        const GasPassageShape shape = opening(0.005, 2.5);
        CHECK_FALSE(shape.friction);
        const auto model = std::make_shared<const GasModel>(volatile_gas(tests::plain_fuel()));
        const GasPassage law(
            shape, {.model = model, .pressure = 101325, .outdoor_density = 1.2, .flame = {}});
        const double density = model->mixture(dry_air()).density(300, 101325);
        const double head = 0.5 * 0.02 * 0.02 / (density * 0.005 * 0.005);
        const tests::Crossed crossed(law, 0.02, 300, 300, *model, 0);
        // Slow flow adds 500 over Re, here about 17 000: 0.03 of 2.5.
        CHECK(crossed.crossing.loss > 2.5 * head);
        CHECK(crossed.crossing.loss < 2.56 * head);
        CHECK(crossed.crossing.buoyancy == 0);
    }
}

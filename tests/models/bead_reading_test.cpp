#include "models/bead_reading.h"

#include <doctest/doctest.h>

#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// Gas at 800 K for ten minutes after one at 300 K, walls at 500 K, 10 g/s.
Results steady() {
    Results results;
    for (int i = 0; i <= 20; ++i) results.time.push_back(30.0 * i);
    const auto add = [&](const char* name, const char* axis, double first, double then) {
        Column column{name, "", "", axis, 1, {}};
        for (std::size_t i = 0; i < results.time.size(); ++i)
            column.values.push_back(i == 0 ? first : then);
        results.columns.push_back(std::move(column));
    };
    results.axes = {{"riser_cell", "m", "", {0.4}},
                    {"flue_cell", "m", "", {0.2}},
                    {"annulus_cell", "m", "", {0.4}},
                    {"barrel_cell", "m", "", {0.4}}};
    add("outlet_gas_temperature", "", 300, 800);
    add("riser_gas_temperature", "riser_cell", 300, 800);
    add("annulus_gas_temperature", "annulus_cell", 300, 800);
    add("flue_wall_temperature", "flue_cell", 500, 500);
    add("riser_wall_temperature", "riser_cell", 500, 500);
    add("riser_skin_temperature", "riser_cell", 500, 500);
    add("barrel_temperature", "barrel_cell", 500, 500);
    add("flue_gas_flow", "", 0.01, 0.01);
    return results;
}

}  // namespace

TEST_SUITE("models/bead_reading") {
    TEST_CASE("a bead in a duct lags at first and settles between gas and wall") {
        const Stove stove = plain_stove();
        for (const char* column :
             {"outlet_gas_temperature", "riser_gas_temperature", "annulus_gas_temperature"}) {
            const auto bare = bead_readings(steady(), stove, column, 0, {.diameter = 0.003});
            REQUIRE(bare.size() == 21);
            CHECK(bare[0] == near(300, 1e-12));
            CHECK(bare[1] < 750);
            CHECK(bare.back() > 500);
            CHECK(bare.back() < 790);
            const auto hidden =
                bead_readings(steady(), stove, column, 0, {.diameter = 0.003, .shielded = true});
            CHECK(hidden.back() == near(800, 1e-3));
            const auto none = bead_readings(steady(), stove, column, 0, {});
            CHECK(none[1] == near(800, 1e-12));
        }
    }

    TEST_CASE("a bead settles where the film of its duct's stream has it") {
        const auto bare = bead_readings(steady(), plain_stove(), "outlet_gas_temperature", 0,
                                        {.diameter = 0.003});
        const double area = constants::pi * 0.125 * 0.125 / 4;  // of the plain stove's flue
        const double film = bead_film(0.003, 0.01 / area, 800);
        CHECK(bare.back() == near(settled_bead({.diameter = 0.003}, {800, 500, film}), 1e-4));
    }

    TEST_CASE("a thicker bead is later and further from the gas") {
        const auto read = [](double diameter) {
            return bead_readings(steady(), plain_stove(), "outlet_gas_temperature", 0,
                                 {.diameter = diameter});
        };
        CHECK(read(0.006)[1] < read(0.001)[1]);
        CHECK(read(0.006).back() < read(0.001).back());
    }

    TEST_CASE("gas is read by a bead, metal is not") {
        CHECK(is_gas_temperature("riser_gas_temperature"));
        CHECK_FALSE(is_gas_temperature("barrel_temperature"));
    }
}

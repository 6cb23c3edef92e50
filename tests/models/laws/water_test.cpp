#include "models/laws/water.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "tests/near.h"

using namespace drawwell;

TEST_SUITE("models/laws/water") {
    TEST_CASE("water boils at 90 and 95 degC at the pressures of the steam tables") {
        // 70.2 and 84.6 kPa: saturated steam, from memory.
        CHECK(std::abs(boiling_point(101325) - 373.15) < 1e-9);
        CHECK(std::abs(boiling_point(84.6e3) - (95 + constants::ice_point)) < 0.3);
        CHECK(std::abs(boiling_point(70.2e3) - (90 + constants::ice_point)) < 0.3);
    }

    TEST_CASE("vapour has the air's pressure where water boils, and a fifth of it at 60 degC") {
        CHECK(vapour_pressure(boiling_point(80e3)) == near(80e3, 1e-9));
        // 19.9 kPa: saturated steam, from memory; the line is 8 % off there.
        CHECK(vapour_pressure(60 + constants::ice_point) == near(19.9e3, 0.08));
    }

    TEST_CASE("the dew point is that of the steam tables, and falls where the fire gets more air") {
        // 53.97, 45.81 and 32.88 degC at 15, 10 and 5 kPa: from memory.
        CHECK(std::abs(dew_point(15e3) - (53.97 + constants::ice_point)) < 0.2);
        CHECK(std::abs(dew_point(10e3) - (45.81 + constants::ice_point)) < 0.2);
        CHECK(std::abs(dew_point(5e3) - (32.88 + constants::ice_point)) < 0.2);
        CHECK(dew_point(0) < 240);
    }

    TEST_CASE("steam holds water within a kelvin of its boiling point under a kitchen's heat") {
        // 2 kW into a 200 mm pot are 64 kW/m2.
        CHECK(boiling_flux(373, 373) == 0);
        CHECK(boiling_flux(300, 373) == 0);
        CHECK(boiling_flux(374.5, 373) > 64e3);
    }

    TEST_CASE("open water gives off more the warmer it is, and takes nothing back from the air") {
        double before = 0;
        for (double t = 300; t <= 370; t += 10) {
            const double flux = evaporation_flux(t, 293, 8, 101325);
            CHECK(flux > before);
            before = flux;
        }
        CHECK(evaporation_flux(275, 310, 8, 101325) == 0);
        CHECK(evaporation_flux(340, 293, 16, 101325) ==
              near(2 * evaporation_flux(340, 293, 8, 101325), 1e-12));
    }
}

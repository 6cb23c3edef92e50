#include "models/laws/bead.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <utility>

#include "solver/constants.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

constexpr Bead bare{.diameter = 0.003, .emissivity = 0.8};
constexpr Bead shielded{.diameter = 0.003, .emissivity = 0.8, .shielded = true};

}  // namespace

TEST_SUITE("models/laws/bead") {
    TEST_CASE("the film on a bead at rest is that of conduction, and grows with the stream") {
        // 2 k/d, with the conductivity of air at 600 K, 0.0469 W/(m K) in tables, from memory.
        CHECK(bead_film(0.002, 0, 600) == near(2 * 0.0469 / 0.002, 0.03));
        CHECK(bead_film(0.002, 1, 600) > 2 * bead_film(0.002, 0, 600));
        CHECK(bead_film(0.002, -1, 600) == near(bead_film(0.002, 1, 600), 1e-12));
    }

    TEST_CASE("the film on a bead is as worked out by hand") {
        // Air at 600 K: 3.06e-5 Pa s, 0.0469 W/(m K), Pr 0.70. Re = 0.8 x 0.002 / 3.06e-5 = 52.3,
        // Nu = 2 + 0.6 x 7.23 x 0.888 = 5.85, h = 137 W/(m2 K). Properties within 3 %.
        CHECK(bead_film(0.002, 0.8, 600) == near(137, 0.04));
    }

    TEST_CASE("a bead without radiation reads the gas") {
        const BeadPlace place{900, 500, 100};
        CHECK(settled_bead(shielded, place) == near(900, 1e-12));
        CHECK(settled_bead({.diameter = 0.003, .emissivity = 0}, place) == near(900, 1e-9));
        CHECK(later_bead({.diameter = 0}, place, 300, 1) == near(900, 1e-12));
    }

    TEST_CASE("a bead in a boundless film reads the gas, and without one the walls") {
        CHECK(settled_bead(bare, {900, 500, 1e9}) == near(900, 1e-6));
        CHECK(settled_bead(bare, {900, 500, 1e-9}) == near(500, 1e-6));
    }

    TEST_CASE("a bare bead reads between gas and wall, and its books balance there") {
        for (const auto& [gas, wall] : {std::pair{900., 500.}, {400., 700.}, {300., 300.}}) {
            const BeadPlace place{gas, wall, 80};
            const double bead = settled_bead(bare, place);
            CHECK(bead >= std::min(gas, wall) - 1e-9);
            CHECK(bead <= std::max(gas, wall) + 1e-9);
            // To a billionth of what either side would be at a difference of 100 K.
            CHECK(std::abs(80 * (gas - bead) - 0.8 * constants::stefan_boltzmann *
                                                   (std::pow(bead, 4) - std::pow(wall, 4))) < 1e-5);
        }
    }

    TEST_CASE("behind a gas that warms steadily a shielded bead stays by its lag") {
        // rho c d / (6 h) = 4e6 x 0.003 / (6 x 100) = 20 s; at 0.5 K/s it is 10 K behind.
        double bead = 400;
        for (int i = 0; i < 4000; ++i)
            bead = later_bead(shielded, {400 + 0.5 * 0.05 * (i + 0.5), 300, 100}, bead, 0.05);
        CHECK(400 + 0.5 * 200 - bead == near(10, 1e-3));  // 200 s are ten lags, e^-10 is left
    }

    TEST_CASE("a bead that is given long settles, and in halves comes where it comes at once") {
        const BeadPlace place{900, 500, 80};
        CHECK(later_bead(bare, place, 300, 1e5) == near(settled_bead(bare, place), 1e-9));
        // The chord of radiation turns a little between the halves: a kelvin of 470.
        const double half = later_bead(bare, place, 300, 10);
        CHECK(later_bead(bare, place, half, 10) == near(later_bead(bare, place, 300, 20), 0.02));
    }
}

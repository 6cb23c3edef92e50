#include "models/laws/enclosure.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

double emitted(double t) {
    return constants::stefan_boltzmann * std::pow(t, 4);
}

/// Two equal discs of radius 0.15 m, 0.20 m apart, and the cylinder between them.
Enclosure drum(double disc_1, double disc_2, double side) {
    const double disc_area = constants::pi * 0.15 * 0.15;
    const double side_area = constants::pi * 0.30 * 0.20;
    const double f12 = coaxial_discs(0.15, 0.15, 0.20);
    const double f1s = 1 - f12;
    const double fs1 = f1s * disc_area / side_area;
    return {.area = {disc_area, disc_area, side_area},
            .emissivity = {disc_1, disc_2, side},
            .view_factor = {0, f12, f1s, f12, 0, f1s, fs1, fs1, 1 - 2 * fs1}};
}

}  // namespace

TEST_CASE("coaxial discs see each other by the classical formula") {
    // V1: 0.2864, worked solution 12-41 to Cengel. V3: computed. V4: exact (3 - sqrt 5)/2.
    CHECK(coaxial_discs(0.15, 0.15, 0.20) == near(0.2864, 2e-4));
    CHECK(coaxial_discs(0.10, 0.28, 0.06) == near(0.9503, 1e-4));
    CHECK(coaxial_discs(1, 1, 1) == near(0.5 * (3 - std::sqrt(5.0)), 1e-12));
    // Reciprocity, contact, and far away, where it is area over pi times distance squared.
    CHECK(0.01 * coaxial_discs(0.1, 0.28, 0.06) ==
          near(0.28 * 0.28 * coaxial_discs(0.28, 0.1, 0.06), 1e-12));
    CHECK(coaxial_discs(0.1, 0.1, 0) == near(1, 1e-7));
    CHECK(coaxial_discs(0.2, 0.1, 0) == near(0.25, 1e-12));
    CHECK(coaxial_discs(1, 1, 1e6) == near(1e-12, 1e-9));
    CHECK_THROWS_AS(coaxial_discs(0, 1, 1), InputError);
}

TEST_CASE("equal, opposite rectangles see each other, and the sides between take the rest") {
    // Unit squares a side apart: 0.1998 opposite, 0.2000 for each side; textbooks, from memory.
    CHECK(parallel_rectangles(1, 1, 1) == near(0.1998, 3e-4));
    CHECK(perpendicular_rectangles(1, 1, 1) == near(0.2000, 3e-4));
    // A closed box, of whatever sides.
    for (const double depth : {0.02, 0.3, 2.0, 20.0}) {
        const double ahead = parallel_rectangles(0.125, 0.11, depth);
        const double roof = perpendicular_rectangles(0.125, 0.11, depth),
                     side = perpendicular_rectangles(0.11, 0.125, depth);
        CHECK(ahead + 2 * roof + 2 * side == near(1, 1e-9));
        // Reciprocity.
        CHECK(0.11 * roof == near(depth * perpendicular_rectangles(0.125, depth, 0.11), 1e-9));
    }
    // Limits: touching, far away (area over pi times distance squared), an endless floor.
    CHECK(parallel_rectangles(0.1, 0.2, 0) == 1);
    CHECK(parallel_rectangles(0.1, 0.2, 1e-4) == near(1, 4e-3));
    CHECK(parallel_rectangles(0.1, 0.2, 100) == near(0.02 / (constants::pi * 1e4), 1e-4));
    CHECK(perpendicular_rectangles(0.1, 0.2, 0) == 0);
    CHECK(perpendicular_rectangles(1000, 0.1, 50) == near(0.5, 2e-3));
    CHECK_THROWS_AS(parallel_rectangles(0, 1, 1), InputError);
    CHECK_THROWS_AS(perpendicular_rectangles(1, 1, -1), InputError);
}

TEST_CASE("two black discs exchange what the worked solution says") {
    // V2: Cengel 12-41, 1100 K to 278 K: 1674 W; with a reradiating side 3757 W (both printed).
    const double driving = emitted(1100) - emitted(278);
    const double direct = constants::pi * 0.15 * 0.15 * coaxial_discs(0.15, 0.15, 0.20);
    CHECK(direct * driving == near(1674, 1e-3));
    const auto g = exchange_areas(drum(1, 1, 0));
    CHECK(g[1] * driving == near(3757, 1e-3));
    // A reradiating wall takes nothing for itself.
    CHECK(std::abs(g[2]) < 1e-12);
}

TEST_CASE("exchange areas are symmetric, positive between surfaces and add up") {
    const Enclosure space = drum(0.8, 0.6, 0.9);
    const auto g = exchange_areas(space);
    for (std::size_t i = 0; i < 3; ++i) {
        double row = 0;
        for (std::size_t j = 0; j < 3; ++j) {
            CHECK(g[3 * i + j] == g[3 * j + i]);
            CHECK(g[3 * i + j] > 0);
            row += g[3 * i + j];
        }
        // All of what i emits is absorbed somewhere.
        CHECK(row == near(space.emissivity[i] * space.area[i], 1e-12));
    }
}

TEST_CASE("an enclosure of two surfaces agrees with the closed form") {
    // Inner body 1 seen wholly by an outer shell 2.
    const double a1 = 0.3, a2 = 0.7, f21 = a1 / a2;
    const auto g = exchange_areas(
        {.area = {a1, a2}, .emissivity = {0.8, 0.7}, .view_factor = {0, 1, f21, 1 - f21}});
    CHECK(g[1] == near(concentric_exchange(a1, a2, 0.8, 0.7), 1e-12));
}

TEST_CASE("cylinders and plates exchange what was computed by hand") {
    // V6: radii 0.15 and 0.29, emissivities 0.8 and 0.7, 900 and 500 K: 22871 W per m2 of inner.
    CHECK(concentric_exchange(1, 0.29 / 0.15, 0.8, 0.7) * (emitted(900) - emitted(500)) ==
          near(22871, 1e-4));
    // V7: plates 0.8 and 0.8, 1000 and 500 K: 35440 W/m2.
    CHECK(parallel_plates_exchange(1, 0.8, 0.8) * (emitted(1000) - emitted(500)) ==
          near(35440, 1e-4));
    // V5: read in `ht`: gray 0.85 body at 400 K in surroundings at 305 K, 816.78 W/m2.
    CHECK(concentric_exchange(1, 1e9, 0.85, 0.5) * (emitted(400) - emitted(305)) ==
          near(816.78, 1e-4));
    CHECK_THROWS_AS(concentric_exchange(1, 2, 0, 0.5), InputError);
    CHECK_THROWS_AS(parallel_plates_exchange(0, 0.5, 0.5), InputError);
}

TEST_CASE("an impossible enclosure is refused with the reason") {
    Enclosure space = drum(0.8, 0.6, 0.9);
    SUBCASE("a row that does not sum to one") {
        space.view_factor[8] += 1e-3;
    }
    SUBCASE("reciprocity broken") {
        space.view_factor[1] += 1e-3;
        space.view_factor[2] -= 1e-3;
    }
    SUBCASE("a negative view factor") {
        space.view_factor[0] = -0.1;
        space.view_factor[1] += 0.1;
    }
    SUBCASE("an emissivity above one") {
        space.emissivity[0] = 1.2;
    }
    SUBCASE("nothing that emits") {
        space.emissivity = {0, 0, 0};
    }
    SUBCASE("an area of zero") {
        space.area[1] = 0;
    }
    SUBCASE("sizes that differ") {
        space.emissivity.pop_back();
    }
    CHECK_THROWS_AS(exchange_areas(space), InputError);
}

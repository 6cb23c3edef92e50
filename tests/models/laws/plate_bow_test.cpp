#include "models/laws/plate_bow.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "tests/near.h"

using namespace drawwell;

namespace {

/// A plate whose rings follow a course over r/a, fine enough that rings do not show.
struct Warm {
    template <class Course>
    Warm(double radius, const Course& course, double through = 0) {
        constexpr int rings = 400;
        for (int i = 0; i <= rings; ++i) edge.push_back(radius * i / rings);
        for (int i = 0; i < rings; ++i) temperature.push_back(course((i + 0.5) / rings));
        warmth = {.edge = edge, .temperature = temperature, .through = through};
    }
    Warm(const Warm&) = delete;
    Warm& operator=(const Warm&) = delete;
    std::vector<double> edge, temperature;
    PlateWarmth warmth;
};

double even(double) {
    return 400;
}
/// A disc evenly this much warmer than its outermost hair's breadth.
auto over_rim(double lead) {
    return [lead](double part) { return part < 0.998 ? 300 + lead : 300; };
}

constexpr double steel = 1.3e-5;

}  // namespace

TEST_SUITE("models/laws/plate_bow") {
    TEST_CASE("a disc in a cold rigid rim gives way at the lead of the handbooks") {
        // K (t/a)^2 / (12 (1 + nu) alpha) by hand: a 285, t 6 mm, 1.3e-5 1/K: 9.2 K with a rim that
        // turns, 32 K clamped. Half a percent of the disc is rim.
        BowingPlate plate{.radius = 0.285, .thickness = 0.006, .expansion = steel};
        CHECK(1 / buckling_share(plate, Warm(0.285, over_rim(1)).warmth, true) == near(9.2, 0.02));
        plate.clamped = true;
        CHECK(1 / buckling_share(plate, Warm(0.285, over_rim(1)).warmth, true) == near(32, 0.02));
    }

    TEST_CASE("a free plate squeezed by its own colder rings gives way far later") {
        // A parabola from middle to rim: 4 (t/a)^2 / ((1 - nu) alpha), worked out by hand from
        // Ritz's method, times 4.2/5.2 as for an even squeeze.
        const BowingPlate plate{.radius = 0.3, .thickness = 0.008, .expansion = steel};
        const auto parabola = [](double part) { return 300 + 100 * (1 - part * part); };
        const double critical = 4 * std::pow(0.008 / 0.3, 2) / (0.7 * steel) * 4.2 / 5.2;
        const Warm warm(0.3, parabola);
        CHECK(buckling_share(plate, warm.warmth, false) == near(100 / critical, 1e-3));
        CHECK(buckling_share(plate, warm.warmth, true) > 2 * 100 / critical);
        CHECK(std::abs(buckling_share(plate, Warm(0.3, even).warmth, false)) < 1e-9);
    }

    TEST_CASE("heat through an evenly warm free plate bends it to a sphere, warm side out") {
        // alpha dT a^2/(2 t): 1.3e-5 x 2 x 0.09 / 0.016 = 0.146 mm.
        const BowingPlate plate{.radius = 0.3, .thickness = 0.008, .expansion = steel};
        const BowBand warm_below = plate_bow(plate, Warm(0.3, even, 2).warmth);
        const BowBand warm_above = plate_bow(plate, Warm(0.3, even, -2).warmth);
        CHECK(warm_below.low == near(-1.46e-4, 0.005));
        CHECK(warm_below.high == near(-1.46e-4, 0.005));
        CHECK(warm_above.low == near(1.46e-4, 0.005));
        BowingPlate held = plate;
        held.clamped = true;
        CHECK(plate_bow(held, Warm(0.3, even, 2).warmth).high == 0);
    }

    TEST_CASE("a buckled drum lid is about as deep as its middle has grown too long") {
        // Without stretching, half the mean of the dish's slope squared is what a radius has grown
        // over its rim: 2/3 (w/a)^2 = alpha dT, 0.61 of the clamped one. Hoops stretch, hence a
        // quarter either way.
        const Warm warm(0.285, over_rim(100), 0.01);
        for (const bool clamped : {false, true}) {
            const BowingPlate lid{
                .radius = 0.285, .thickness = 0.0012, .expansion = steel, .clamped = clamped};
            const double unstretched =
                0.285 * std::sqrt(steel * 100 / (clamped ? 0.6095 : 2.0 / 3));
            CHECK(-plate_bow(lid, warm.warmth).high == near(unstretched, 0.25));
        }
    }

    TEST_CASE(
        "a clamped plate stays flat up to its critical lead and bows from there without a leap") {
        const BowingPlate plate{
            .radius = 0.285, .thickness = 0.006, .expansion = steel, .clamped = true};
        double last = 0;
        for (const double lead : {10.0, 30.0, 33.0, 40.0, 80.0}) {
            const double bow = -plate_bow(plate, Warm(0.285, over_rim(lead), 1).warmth).high;
            CHECK(bow >= last);
            if (lead < 31) CHECK(bow == 0);
            if (lead == 33) CHECK(bow < 0.006 / 2);
            last = bow;
        }
        CHECK(last > 0.006);
    }

    TEST_CASE("a warmer rim holds a free plate flatter, and the low bow is never over the high") {
        const BowingPlate plate{.radius = 0.3, .thickness = 0.004, .expansion = steel};
        const auto colder_middle = [](double part) { return 300 + 100 * part * part; };
        const double plain = -plate_bow(plate, Warm(0.3, even, 2).warmth).high;
        CHECK(-plate_bow(plate, Warm(0.3, colder_middle, 2).warmth).high < plain);
        for (const double lead : {-50.0, 0.0, 5.0, 50.0, 300.0}) {
            const Warm warm(0.3, over_rim(lead), 2);
            const BowBand band = plate_bow(plate, warm.warmth);
            CHECK(std::abs(band.low) <= std::abs(band.high));
            CHECK(band.high < 0);
        }
    }
}

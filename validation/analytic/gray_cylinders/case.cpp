#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "models/laws/enclosure.h"
#include "solver/constants.h"
#include "validation/bench.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr double inner = 0.15, outer = 0.29;           // [m] radii
constexpr double e_inner = 0.8, e_outer = 0.7;         // [-]
constexpr double cold = 500;                           // [K] of the outer cylinder
constexpr double area_in = 2 * constants::pi * inner;  // [m2] of a metre
constexpr double area_out = 2 * constants::pi * outer;

/// By radiosities: the inner cylinder does not see itself.
std::vector<double> by_enclosure() {
    const double back = inner / outer;
    return exchange_areas({.area = {area_in, area_out},
                           .emissivity = {e_inner, e_outer},
                           .view_factor = {0, 1, back, 1 - back}});
}

double closed_form() {
    return area_in / (1 / e_inner + (1 - e_outer) / e_outer * inner / outer);
}

/// Indefinite integral of dT / (Ts^4 - T^4), times 4 Ts^3.
double way(double t) {
    return std::log(std::abs((cold + t) / (cold - t))) + 2 * std::atan(t / cold);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a cylinder in a cylinder radiates what the closed form says, and cools by it") {
        const double exact = closed_form();
        const double flux =
            exact / area_in * constants::stefan_boltzmann * (std::pow(900, 4) - std::pow(500, 4));
        compare({"analytic/gray_cylinders", "closed form against 22871 W/m2, share off [-]",
                 share_off(flux, 22871), 1e-4});
        const auto exchange = by_enclosure();
        compare({"analytic/gray_cylinders", "radiosities, share off [-]",
                 share_off(exchange[1], exact), 1e-9});
        compare({"analytic/gray_cylinders", "short form, share off [-]",
                 share_off(concentric_exchange(area_in, area_out, e_inner, e_outer), exact), 1e-9});

        // From 900 K to 600 K within an outer cylinder that stays at 500 K.
        constexpr double capacity = 4000;  // [J/K]
        const double duration = capacity /
                                (4 * exact * constants::stefan_boltzmann * cold * cold * cold) *
                                (way(600) - way(900));
        Bench bench;
        const SolidId hot = bench.add(8, capacity / 8, 50, 900);
        const SolidId around = bench.add(8, 500, 50, cold);
        bench.network.solids[index(around)].held = true;
        bench.network.enclosures.push_back({.name = "cylinders",
                                            .patches = {{{hot, 1}}, {{around, 1}}},
                                            .exchange_area = exchange});
        const auto at = bench.run({duration}, 1e-6).back();
        compare({"analytic/gray_cylinders", "inner cylinder when it should be at 600 K [K]",
                 std::abs(at[0] - 600), 0.01});
    }
}

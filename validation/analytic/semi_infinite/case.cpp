#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "validation/bench.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr double conductivity = 1, volumetric = 1.8e6;  // [W/(m K)], [J/(m3 K)]
constexpr double diffusivity = conductivity / volumetric;
constexpr double flux = 10e3, film = 30;  // [W/m2], [W/(m2 K)]
constexpr double time = 3600;             // [s]
constexpr double first = 300;             // [K]
// Six diffusion lengths: what the far end lets through is below 1e-8 of the rise at the face.
constexpr double deep = 0.3, depth = 0.05;  // [m]
constexpr std::size_t cells = 121;          // 2.5 mm each; node 20 stands at 50 mm
constexpr std::size_t node = 20;

double flux_rise(double x) {
    const double y = x / (2 * std::sqrt(diffusivity * time));
    return 2 * flux / conductivity *
           (std::sqrt(diffusivity * time / constants::pi) * std::exp(-y * y) -
            x / 2 * std::erfc(y));
}

double film_share(double x) {
    const double y = x / (2 * std::sqrt(diffusivity * time));
    const double b = film / conductivity * std::sqrt(diffusivity * time);
    return std::erfc(y) - std::exp(film * x / conductivity + b * b) * std::erfc(y + b);
}

std::vector<double> computed(std::function<double(double)> loss, std::size_t cut = cells) {
    Bench bench;
    const auto slab = bench.add_slab({.thickness = deep,
                                      .conductivity = conductivity,
                                      .density = volumetric / 1000,
                                      .heat_capacity = 1000,
                                      .temperature = first,
                                      .cells = cut});
    bench.add_face(slab.front(), 1, std::move(loss));
    return bench.run({time}, 1e-7).back();
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a thick wall warms under a given flux, and behind a film, as the closed forms say") {
        compare({"analytic/semi_infinite", "closed form of the flux, 504.6 K and 154.6 K [K]",
                 std::max(std::abs(flux_rise(0) - 504.6), std::abs(flux_rise(depth) - 154.6)),
                 0.06});
        compare({"analytic/semi_infinite", "closed form of the film, 0.6505 and 0.2343 [-]",
                 std::max(std::abs(film_share(0) - 0.6505), std::abs(film_share(depth) - 0.2343)),
                 1e-4});
        const auto heated = computed([](double) { return -flux; });
        compare({"analytic/semi_infinite", "10 kW/m2 for an hour, at the face [K]",
                 std::abs(heated[0] - first - flux_rise(0)), 0.5});
        compare({"analytic/semi_infinite", "10 kW/m2 for an hour, at 50 mm [K]",
                 std::abs(heated[node] - first - flux_rise(depth)), 0.5});
        constexpr double gas = first + 500;
        const auto warmed = computed([](double t) { return film * (t - gas); });
        compare({"analytic/semi_infinite", "film of 30 W/m2K, at the face [-]",
                 std::abs((warmed[0] - first) / 500 - film_share(0)), 1e-3});
        compare({"analytic/semi_infinite", "film of 30 W/m2K, at 50 mm [-]",
                 std::abs((warmed[node] - first) / 500 - film_share(depth)), 1e-3});
    }

    TEST_CASE("a thick wall's error falls with the square of its cells' size") {
        const auto error = [](std::size_t cut) {
            return std::abs(computed([](double) { return -flux; }, cut)[0] - first - flux_rise(0));
        };
        compare({"analytic/semi_infinite", "order from 15 to 7.5 mm cells, difference from 2 [-]",
                 std::abs(std::log2(error(21) / error(41)) - 2), 0.2});
    }
}

#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "validation/bench.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

// A steel plate that loses heat from one face.
constexpr double thickness = 3e-3, density = 7850, heat_capacity = 500;  // [m], [kg/m3], [J/(kg K)]
constexpr double emissivity = 0.8, film = 20;                            // [-], [W/(m2 K)]
constexpr double first = 773.15, last = 473.15, around = 293.15;         // [K]
constexpr double radiating = emissivity * constants::stefan_boltzmann;

/// Time [s] in which radiation to surroundings at `around` cools the plate.
double radiation_alone() {
    const auto f = [](double t) {
        return std::log((t + around) / (t - around)) + 2 * std::atan(t / around);
    };
    return (f(last) - f(first)) * density * heat_capacity * thickness /
           (4 * radiating * around * around * around);
}

/// Time [s] in which convection and radiation to absolute zero cool it.
double with_convection() {
    const double share = radiating / film * first * first * first;
    const double r = last / first;
    return std::log((1 + share * r * r * r) / ((1 + share) * r * r * r)) / 3 * density *
           heat_capacity * thickness / film;
}

double error_at(double time, std::function<double(double)> flux, double tolerance) {
    Bench bench;
    const SolidId plate = bench.add(thickness * density, heat_capacity, 50, first);
    bench.add_face(plate, 1, std::move(flux));
    return std::abs(bench.run({time}, tolerance).back()[0] - last);
}

double radiated(double t) {
    return radiating * (t * t * t * t - around * around * around * around);
}
double both(double t) {
    return film * t + radiating * t * t * t * t;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a plate that radiates cools in the time of the closed form") {
        compare({"analytic/radiating_lump", "radiation, closed form against 684.97 s [s]",
                 std::abs(radiation_alone() - 684.97), 0.01});
        compare({"analytic/radiating_lump", "radiation, temperature at that time [K]",
                 error_at(radiation_alone(), radiated, 1e-5), 0.02});
        compare({"analytic/radiating_lump", "with convection, closed form against 190.66 s [s]",
                 std::abs(with_convection() - 190.66), 0.01});
        compare({"analytic/radiating_lump", "with convection, temperature at that time [K]",
                 error_at(with_convection(), both, 1e-5), 0.02});
    }
}

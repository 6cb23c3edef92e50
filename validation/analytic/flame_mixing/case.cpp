#include <doctest/doctest.h>

#include <algorithm>
#include <boost/numeric/odeint/stepper/runge_kutta4.hpp>
#include <cmath>

#include "models/fire/flame.h"
#include "validation/compare.h"
#include "validation/gas_bench.h"

using namespace drawwell;

namespace {

constexpr double long_flame = 0.6;  // [m]
constexpr double hot = 1200;        // [K]: hot enough to burn beyond the tip

/// Unburnt share of an air ratio along a way of mixing lengths, by Runge and Kutta's fourth order.
double integrated(double air_ratio, double strides) {
    constexpr int steps = 20000;
    double phi = 1;
    boost::numeric::odeint::runge_kutta4<double> stepper;
    const auto law = [&](double at, double& slope, double) {
        slope = -at * (at + air_ratio - 1) / air_ratio;
    };
    for (int i = 0; i < steps; ++i) stepper.do_step(law, phi, 0.0, strides / steps);
    return phi;
}

/// The same by the program, the way cut into that many pieces. Volatiles in air.
double computed(const GasModel& model, double air_ratio, double length, int pieces) {
    GasState gas;
    const double fuel = 1 / (1 + air_ratio * model.oxygen_demand() / dry_air()[o2]);
    for (std::size_t s = 0; s < species_count; ++s)
        gas.mass_fraction[s] = (1 - fuel) * dry_air()[s];
    gas.mass_fraction[volatiles] = fuel;
    gas.flame = {.path = 0, .length = long_flame, .oxygen = gas.mass_fraction[o2]};
    const FlameLimits limits{};
    for (int i = 0; i < pieces; ++i) burn_on(gas, length / pieces, hot, model, limits);
    return gas.mass_fraction[volatiles] / fuel;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("the flame's closed form is the integral of its law, however it is cut") {
        const GasBench bench(300);
        const GasModel& model = *bench.surroundings.model;
        double worst = 0, cut = 0;
        for (const double air_ratio : {0.6, 1.0, 1.0000001, 1.5, 2.5, 6.0})
            for (const double length : {0.05, 0.3, 0.6, 1.5}) {
                const double exact = integrated(air_ratio, length / (long_flame / 3));
                const double once = computed(model, air_ratio, length, 1);
                worst = std::max(worst, std::abs(once - exact));
                cut = std::max(cut, std::abs(computed(model, air_ratio, length, 37) - once));
            }
        compare(
            {"analytic/flame_mixing", "unburnt share against integration, worst [-]", worst, 1e-6});
        compare({"analytic/flame_mixing", "one piece against 37, worst [-]", cut, 1e-6});
    }
}

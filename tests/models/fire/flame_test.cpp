#include "models/fire/flame.h"

#include <doctest/doctest.h>

#include <boost/numeric/odeint/stepper/runge_kutta4.hpp>
#include <cmath>
#include <vector>

#include "models/fire/solid_fuel.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

const GasModel& model() {
    static const GasModel gas(volatile_gas(plain_fuel()));
    return gas;
}

/// A kilogram of gas where a flame begins: so much oxygen, and volatiles for an air ratio.
GasState flame_start(double air_ratio, double length, double oxygen = 0.2) {
    GasState gas;
    gas.mass_fraction[o2] = oxygen;
    gas.mass_fraction[volatiles] = oxygen / air_ratio / model().oxygen_demand();
    gas.mass_fraction[n2] = 1 - oxygen - gas.mass_fraction[volatiles];
    gas.flame = {.path = 0, .length = length, .oxygen = oxygen};
    return gas;
}

constexpr double hot = 1200, cold = 700;

/// Unburnt share after a way, in so many equal strides.
double unburnt(double air_ratio, double length, double way, int strides, double temperature = hot) {
    GasState gas = flame_start(air_ratio, length);
    const double first = gas.mass_fraction[volatiles];
    for (int i = 0; i < strides; ++i) burn_on(gas, way / strides, temperature, model(), {});
    return gas.mass_fraction[volatiles] / first;
}

/// The same from dphi/ds = -phi (phi + lambda - 1)/(lambda l), l = L/3, by Runge and Kutta.
double integrated(double lambda, double length, double way) {
    constexpr int steps = 2000;
    double phi = 1;
    boost::numeric::odeint::runge_kutta4<double> stepper;
    const auto law = [&](double at, double& slope, double) {
        slope = -at * (at + lambda - 1) / (lambda * length / 3);
    };
    for (int i = 0; i < steps; ++i) stepper.do_step(law, phi, 0.0, way / steps);
    return phi;
}

}  // namespace

TEST_SUITE("models/fire/flame") {
    TEST_CASE("a flame burns down as its equation says, however it is divided") {
        for (const double lambda : {0.6, 0.999999, 1.0, 1.000001, 1.5, 3.0, 20.0})
            for (const double way : {0.05, 0.3, 0.9}) {
                const double expected = integrated(lambda, 0.6, way);
                // Runge and Kutta in 2000 steps: about 1e-12.
                CHECK(unburnt(lambda, 0.6, way, 1) == near(expected, 1e-8));
                CHECK(unburnt(lambda, 0.6, way, 7) == near(expected, 1e-8));
            }
    }

    TEST_CASE("the closed form is the one published with the model") {
        const double lambda = 2, l = 0.2, s = 0.3;
        const double growth = std::exp((lambda - 1) * s / (lambda * l));
        CHECK(unburnt(lambda, 3 * l, s, 1) == near((lambda - 1) / (lambda * growth - 1), 1e-9));
        CHECK(unburnt(1, 3 * l, s, 1) == near(1 / (1 + s / l), 1e-9));
    }

    TEST_CASE("with too little air the oxygen runs out and the rest stays fuel") {
        GasState gas = flame_start(0.5, 0.6);
        const double fuel = gas.mass_fraction[volatiles];
        burn_on(gas, 50, hot, model(), {});
        CHECK(gas.mass_fraction[o2] < 1e-6);
        CHECK(gas.mass_fraction[o2] > -1e-12);
        CHECK(gas.mass_fraction[volatiles] == near(fuel / 2, 1e-4));
    }

    TEST_CASE("past its tip a flame freezes in cold gas and burns on in hot gas") {
        const double at_tip = unburnt(1.5, 0.6, 0.6, 12, cold);
        // Blurred over a tenth of its length behind the tip: from there on nothing burns.
        const double behind = unburnt(1.5, 0.6, 0.75, 15, cold);
        CHECK(unburnt(1.5, 0.6, 3.0, 60, cold) == near(behind, 1e-12));
        CHECK(behind <= at_tip);
        CHECK(unburnt(1.5, 0.6, 3.0, 60, hot) < behind / 10);
        // Before its tip, mixed gas may be cold: the flame itself is not.
        CHECK(unburnt(1.5, 0.6, 0.3, 6, cold) == near(unburnt(1.5, 0.6, 0.3, 6, hot), 1e-12));
    }

    TEST_CASE("between hot and cold, and at the tip, the change is gradual") {
        double last = unburnt(1.5, 0.3, 1.0, 20, 840);
        for (double t = 842; t < 910; t += 2) {
            const double now = unburnt(1.5, 0.3, 1.0, 20, t);
            CHECK(now <= last);
            CHECK(last - now < 0.02);
            last = now;
        }
    }

    TEST_CASE("the heat set free is the heating value of what burnt, the species its products") {
        GasState gas = flame_start(1.5, 0.6);
        gas.mass_fraction[co] = 0.01;
        gas.mass_fraction[n2] -= 0.01;
        const Composition before = gas.mass_fraction;
        const double heat = burn_on(gas, 0.3, hot, model(), {});
        CHECK(heat == near(model().higher_heating_value(before) -
                               model().higher_heating_value(gas.mass_fraction),
                           1e-12));
        const auto had = model().elements(before), has = model().elements(gas.mass_fraction);
        for (std::size_t e = 0; e < had.size(); ++e) CHECK(has[e] == near(had[e], 1e-12));
        CHECK(gas.flame.path == doctest::Approx(0.3));
        // Volatiles and carbon monoxide burn in step.
        CHECK(gas.mass_fraction[co] / before[co] ==
              near(gas.mass_fraction[volatiles] / before[volatiles], 1e-9));
    }

    TEST_CASE("gas without a flame, oxygen or fuel does not burn") {
        GasState no_flame = flame_start(1.5, 0.6);
        no_flame.flame.oxygen = 0;
        CHECK(burn_on(no_flame, 1, hot, model(), {}) == 0);
        GasState no_oxygen = flame_start(1.5, 0.6);
        no_oxygen.mass_fraction[o2] = 0;
        CHECK(burn_on(no_oxygen, 1, hot, model(), {}) == 0);
        GasState air{.enthalpy = 0, .mass_fraction = dry_air(), .flame = {0, 0.6, 0.2}};
        CHECK(burn_on(air, 1, hot, model(), {}) == 0);
    }

    TEST_CASE("flames are as long as Heskestad's formula says") {
        // Computed from the formula: 1 MW over 1 m, 17 kW over 150 mm.
        CHECK(flame_length(1e6, 1) == near(0.235 * 15.8489 - 1.02, 1e-4));
        CHECK(flame_length(17e3, 0.15) == near(0.577, 2e-3));
        CHECK(flame_length(0, 0.15) == 0.05);
        CHECK(flame_length(-10, 0.15) == 0.05);
        CHECK(flame_length(17e3, 0.3) < flame_length(17e3, 0.15));
    }

    TEST_CASE("heat moves downstream as wood gives off more and as air runs short") {
        // The share of the heat set free in the first 0.3 m of a path of 1.2 m.
        const auto early = [](double volatile_flow, double air_flow) {
            Arriving air;
            air.mass_flow = air_flow;
            for (std::size_t i = 0; i < species_count; ++i)
                air.species[i] = air_flow * dry_air()[i];
            Composition added{};
            added[volatiles] = volatile_flow;
            GasState gas;
            gas.flame = flame_of(air, added, 0.12, 1, 0, model());
            for (std::size_t i = 0; i < species_count; ++i)
                gas.mass_fraction[i] = (air.species[i] + added[i]) / (air_flow + volatile_flow);
            std::vector<double> heat;
            for (int i = 0; i < 12; ++i) heat.push_back(burn_on(gas, 0.1, hot, model(), {}));
            return (heat[0] + heat[1] + heat[2]) / sum_of(heat);
        };
        const double usual = early(0.0005, 0.010);
        CHECK(usual > 0.3);
        CHECK(early(0.0010, 0.020) < usual - 0.02);  // more wood, the same air ratio
        CHECK(early(0.0005, 0.004) < usual - 0.02);  // the same wood, less air
    }
}

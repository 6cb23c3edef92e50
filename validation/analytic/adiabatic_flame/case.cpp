#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "cli/read/read_library.h"
#include "models/fire/table_fire.h"
#include "solver/march.h"
#include "validation/compare.h"
#include "validation/gas_bench.h"

using namespace drawwell;

namespace {

constexpr double reactants = 298.15;         // [K]
constexpr double moisture_dry_basis = 0.25;  // 20 % of the wet mass
constexpr double rate = 5e-4;                // [kg/s] of dry ash-free wood
constexpr double ash = 0.005;
constexpr double humidity = 0.005;  // [kg/kg] of water per dry air, as in the reference

/// Hardwood of the reference: 49.3 % C, 6.1 % H, 44.6 % O with nitrogen, 19.69 MJ/kg dry with ash.
SolidFuel hardwood(const Library& library) {
    SolidFuel fuel{.wood = library.woods.at("ash"),
                   .char_yield = library.bed.char_yield.value,
                   .temperature = reactants};
    fuel.wood.higher_heating_value = 19.69e6 / (1 - ash);
    return fuel;
}

/// Oxygen [kg] that a kilogram of dry ash-free wood needs.
double oxygen_needed(const Wood& wood) {
    return wood.carbon * 31.998 / 12.011 + wood.hydrogen * 15.999 / (2 * 1.008) - wood.oxygen;
}

struct Burnt {
    double temperature = 0;  // [K]
    double left = 0;         // [-] heating value that left unburnt, share
};

/// Gas at the end of a long duct without walls, wood and air given.
Burnt burn(double air_ratio) {
    const Library library = read_library();
    const SolidFuel fuel = hardwood(library);
    GasBench bench(reactants);
    const auto model = std::make_shared<const GasModel>(volatile_gas(fuel));
    bench.surroundings.model = model;
    bench.surroundings.flame.freezing_temperature = 300;  // all burns that can
    bench.network.gas_temperature = [model](const GasState& gas) {
        return model->mixture(gas.mass_fraction).temperature(gas.enthalpy, 1200);
    };
    GasState air;
    air.mass_fraction = dry_air();
    for (double& share : air.mass_fraction) share /= 1 + humidity;
    air.mass_fraction[h2o] = humidity / (1 + humidity);
    air.enthalpy = model->mixture(air.mass_fraction).enthalpy(reactants);
    for (Junction& boundary : bench.network.junctions) boundary.gas = air;
    BurnRateFire::Shape shape;
    shape.dry_rate = Table(rate);
    shape.moisture_dry_basis = moisture_dry_basis / (1 - ash);
    shape.fuel = fuel;
    shape.constants = library.bed;
    shape.constants.char_to_co.value = 0;
    shape.width = 0.15;
    auto fire = std::make_unique<BurnRateFire>(std::move(shape), model);
    const BurnRateFire& burning = *fire;
    const JunctionId hearth = bench.add_junction("hearth");
    bench.add_wall(reactants);
    bench.add_passage(bench.room, hearth, plain_duct(0.15, 0.001, 0, 1), true);
    bench.add_passage(hearth, bench.outdoors, plain_duct(0.15, 40, 0, 400));
    bench.network.fire = std::move(fire);
    bench.network.fire_sites = {hearth};
    bench.network.initial_fuel = {0, 0};
    const Network network = finish(std::move(bench.network));
    const Topology topology = find_topology(network);
    March march(network, topology);

    const std::vector<double> walls{reactants};
    const std::vector<double> flow{air_ratio * oxygen_needed(fuel.wood) * rate /
                                   air.mass_fraction[o2]};
    // The char that lies there burns as fast as it is made.
    double low = 0, high = 10;
    std::vector<double> emission{0};
    for (int i = 0; i < 60; ++i) {
        const std::vector<double> state{0, (low + high) / 2};
        for (int k = 0; k < 3; ++k) {
            march.begin({0, walls, state}, flow, emission);
            march.complete();
            emission[0] = march.emitted(0);
        }
        std::vector<double> change(2), heat(1);
        burning.rates({0, state, walls}, march.arrived(), march.cells(), change, heat);
        (change[1] > 0 ? low : high) = state[1];
    }
    const GasState& gas = march.crossing(1).outlet;
    return {network.gas_temperature(gas), model->higher_heating_value(gas.mass_fraction) *
                                              march.mass_flow(1) /
                                              (rate * fuel.wood.higher_heating_value)};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("wood burnt in air without loss of heat reaches its flame temperature") {
        // Heat balance of hardwood with 20 % moisture on the lower heating value, complete
        // combustion, reactants at 25 degC, air with 5 g/kg of water; computed apart from the
        // program.
        constexpr struct {
            double air_ratio, temperature;
        } reference[] = {{1.5, 1444 + 273.15}, {2, 1172 + 273.15}, {3, 857 + 273.15}};
        double worst = 0, left = 0;
        for (const auto& point : reference) {
            const Burnt seen = burn(point.air_ratio);
            worst = std::max(worst, std::abs(seen.temperature - point.temperature));
            left = std::max(left, seen.left);
        }
        compare(
            {"analytic/adiabatic_flame", "air ratios 1.5, 2, 3, worst difference [K]", worst, 10});
        compare({"analytic/adiabatic_flame", "heating value left unburnt, share [-]", left, 1e-3});
    }
}

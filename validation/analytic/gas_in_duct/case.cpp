#include <doctest/doctest.h>

#include <cmath>

#include "models/gas/transport.h"
#include "solver/constants.h"
#include "solver/march.h"
#include "validation/compare.h"
#include "validation/gas_bench.h"

using namespace drawwell;

namespace {

// Dry air takes no part in radiation; a narrow bore keeps the flow laminar.
constexpr double bore = 0.02, inlet = 320, wall = 300;  // [m], [K]

struct Air {
    double heat_capacity = 0, viscosity = 0, conductivity = 0;
};

Air air_properties(const GasBench& bench) {
    const Mixture air = bench.surroundings.model->mixture(dry_air());
    const double t = (inlet + wall) / 2;
    const Transport moved = transport(dry_air(), t, air.heat_capacity(t));
    return {air.heat_capacity(t), moved.viscosity, moved.conductivity};
}

/// Mean Nusselt number of combined entry, constant wall temperature.
double baehr_stephan(double graetz, double prandtl) {
    const double thermal =
        3.657 / std::tanh(2.264 * std::pow(graetz, -1.0 / 3) + 1.7 * std::pow(graetz, -2.0 / 3)) +
        0.0499 * graetz * std::tanh(1 / graetz);
    return thermal / std::tanh(2.432 * std::pow(prandtl, 1.0 / 6) * std::pow(graetz, -1.0 / 6));
}

/// Outlet temperature [K] of the passage, cut into that many cells.
double outlet(double mass_flow, double length, std::size_t cells) {
    GasBench bench(inlet);
    const std::size_t held = bench.add_wall(wall);
    GasPassageShape shape = plain_duct(bore, length, 0, cells);
    for (GasCellShape& cell : shape.cells)
        cell.faces.push_back({held, constants::pi * bore * cell.length, 0.9});
    bench.add_passage(bench.room, bench.outdoors, std::move(shape), true);
    const Network network = finish(std::move(bench.network));
    const Topology topology = find_topology(network);
    March march(network, topology);
    const std::vector<double> temperature{wall}, flow{mass_flow};
    march.begin({0, temperature, {}}, flow, {});
    march.complete();
    return network.gas_temperature(march.crossing(0).outlet);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("air cools along a duct as effectiveness and transfer units say") {
        const Air air = air_properties(GasBench(inlet));
        const double prandtl = air.viscosity * air.heat_capacity / air.conductivity;
        constexpr double reynolds = 1000;
        const double mass_flow = reynolds * constants::pi / 4 * bore * air.viscosity;
        double worst = 0, coarse = 0;
        for (const double diameters : {5.0, 20.0, 100.0, 400.0}) {
            const double nusselt = baehr_stephan(reynolds * prandtl / diameters, prandtl);
            const double units = nusselt * air.conductivity * constants::pi * diameters * bore /
                                 (mass_flow * air.heat_capacity);
            const double exact = wall + (inlet - wall) * std::exp(-units);
            const double fine = outlet(mass_flow, diameters * bore, 16);
            worst = std::max(worst, std::abs(fine - exact) / (inlet - wall));
            coarse = std::max(
                coarse, std::abs(outlet(mass_flow, diameters * bore, 3) - fine) / (inlet - wall));
        }
        compare({"analytic/gas_in_duct", "outlet, worst of four lengths, of the inlet's excess [-]",
                 worst, 0.01});
        compare({"analytic/gas_in_duct", "3 cells against 16, of the inlet's excess [-]", coarse,
                 0.01});
    }
}

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>

#include "models/gas/transport.h"
#include "models/laws/natural_convection.h"
#include "solver/constants.h"
#include "solver/march.h"
#include "validation/compare.h"
#include "validation/gas_bench.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/mixed_convection";
constexpr double hot = 600, cold = 400;                  // [K]
constexpr double gap = 0.1, height = 0.6, flow = 0.008;  // [m], [m], [kg/s]

/// Film [W/(m2 K)] on a wall of a gap that dry air goes through, up or down; so little wall that
/// the air keeps its temperature. Dry air does not radiate.
double film(Film kind, double gas, double wall, double rise) {
    GasBench bench(gas);
    const std::size_t held = bench.add_wall(wall);
    GasPassageShape shape = plain_duct(gap, height, rise, 1);
    shape.film = kind;
    shape.film_length = height;
    shape.cells[0].faces.push_back({held, 1e-4, 0.9});
    bench.add_passage(bench.room, bench.outdoors, std::move(shape), true);
    const Network network = finish(std::move(bench.network));
    const Topology topology = find_topology(network);
    March march(network, topology);
    const std::vector<double> temperature{wall}, flows{flow};
    march.begin({0, temperature, {}}, flows, {});
    march.complete();
    return march.conductance()[0] / 1e-4;
}

/// Churchill and Chu's plate in air of the gas's temperature.
double natural(double gas, double wall) {
    const GasBench bench(gas);
    const Mixture air = bench.surroundings.model->mixture(dry_air());
    const double capacity = air.heat_capacity(gas);
    const Transport moved = transport(dry_air(), gas, capacity);
    const double kinematic = moved.viscosity / air.density(gas, constants::standard_pressure);
    const double prandtl = moved.viscosity * capacity / moved.conductivity;
    const double rayleigh = constants::gravity * std::abs(gas - wall) / gas * std::pow(height, 3) /
                            (kinematic * kinematic) * prandtl;
    return natural_vertical_nusselt(rayleigh, prandtl) * moved.conductivity / height;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("buoyancy at a wall helps gas that goes its way and hinders gas that does not") {
        for (const bool gas_hotter : {true, false}) {
            const double gas = gas_hotter ? hot : cold, wall = gas_hotter ? cold : hot;
            const double forced = film(Film::duct, gas, wall, -height);
            const double stream = natural(gas, wall);
            const double f3 = forced * forced * forced, n3 = stream * stream * stream;
            const char* where = gas_hotter ? "cold wall" : "hot wall";
            // Along a cold wall gas sinks by itself.
            const double helped = film(Film::annulus, gas, wall, gas_hotter ? -height : height);
            const double hindered = film(Film::annulus, gas, wall, gas_hotter ? height : -height);
            compare_beside({name, fmt::format("Churchill, {}, helped [W/m2K]", where),
                            std::cbrt(f3 + n3), helped, 0.02});
            compare_beside({name, fmt::format("Churchill, {}, hindered [W/m2K]", where),
                            std::cbrt(std::abs(f3 - n3)), hindered, 0.15});
        }
    }
}

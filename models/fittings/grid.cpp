#include "models/fittings/grid.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "models/components/stove_builder.h"
#include "models/fittings/reading.h"
#include "models/laws/outside.h"
#include "models/series.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double oxidised_emissivity = 0.8;  // [-] of hot wire, from memory

}  // namespace

std::span<const ColumnInfo> Grid::columns() {
    static constexpr std::array columns{
        ColumnInfo{"grid_temperature", "K", table, "wires of the grid at the tunnel's mouth"}};
    return columns;
}

double grid_loss(double free_share) {
    const double blocked = 1 / free_share - 1;
    return 1.3 * (1 - free_share) + blocked * blocked;
}

double wire_temperature(const WireAcross& wire) {
    const AirFilm air = air_properties(std::clamp((wire.gas + wire.walls) / 2, 250.0, 1500.0));
    const double reynolds = std::abs(wire.velocity) * wire.wire / air.kinematic_viscosity;
    const double film =
        0.683 * std::pow(reynolds, 0.466) * std::cbrt(air.prandtl) * air.conductivity / wire.wire;
    double low = std::min(wire.gas, wire.walls), high = std::max(wire.gas, wire.walls);
    for (int i = 0; i < 40; ++i) {
        const double middle = (low + high) / 2;
        const double gains =
            film * (wire.gas - middle) + oxidised_emissivity * constants::stefan_boltzmann *
                                             (std::pow(wire.walls, 4) - std::pow(middle, 4));
        (gains > 0 ? low : high) = middle;
    }
    return (low + high) / 2;
}

std::vector<FittingProblem> problems(const Grid& grid, const Stove& stove) {
    if (!stove.tunnel) return {{{"wire"}, "a grid stands in a tunnel's mouth: add [tunnel]"}};
    if (grid.pitch <= 1.2 * grid.wire)
        return {{{"pitch", "wire"}, "the wires leave hardly any room between them"}};
    return {};
}

void add_fitting(StoveBuilder& builder, const Grid& grid) {
    const std::size_t tunnel = *builder.layout.tunnel;
    builder.amend(tunnel, [&](GasPassageShape& shape) {
        shape.losses.push_back({.area = shape.cells.front().area,
                                .forward = grid_loss(grid.free_share()),
                                .reverse = grid_loss(grid.free_share())});
    });
    const std::size_t wall = index(builder.layout.tunnel_wall.solids.front());
    builder.layout.readings.push_back(
        {"grid_temperature",
         [tunnel, wall, wire = grid.wire, free = grid.free_share()](const HeatBalance& at) {
             const GasCell& mouth =
                 at.flow().march().cells()[at.network().passages[tunnel].first_cell];
             return wire_temperature({.wire = wire,
                                      .velocity = mouth.velocity / free,
                                      .gas = mouth.inlet_temperature,
                                      .walls = at.temperature()[wall]});
         }});
}

std::vector<FittingAnswer> answers(const Grid& grid, const Stove&, std::size_t at,
                                   const Results& results) {
    const Peak hottest = peak(results, {results, "grid_temperature", at});
    return {{"most", "wires, at most", "K", hottest.value},
            {"most_time", "that hot after", "s", results.time[hottest.at]},
            {"free", "left free of the tunnel", "1", grid.free_share()}};
}

}  // namespace drawwell

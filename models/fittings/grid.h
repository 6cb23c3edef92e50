#pragma once

#include "models/fittings/kind.h"

namespace drawwell {

/// A grid of woven wire across the tunnel's mouth, which holds back wood and embers.
struct Grid {
    static constexpr std::string_view table = "grid";
    static constexpr std::string_view axis_meaning = "way from the feed's centre";
    std::string name;
    double wire = 0;   // [m] diameter of its wires
    double pitch = 0;  // [m] between their centres

    /// Share [-] of the tunnel that it leaves free.
    double free_share() const { return (1 - wire / pitch) * (1 - wire / pitch); }
    double position() const { return 0; }
    static std::span<const ColumnInfo> columns();
};

/// Loss [-] of a woven grid on the velocity before it, by its free share: 1.3 (1 - f) + (1/f -
/// 1)^2, round wires, Reynolds number of the wire from 1000; below, up to twice as much (Idelchik,
/// from memory).
double grid_loss(double free_share);

/// Temperature [K] of a wire between gas that blows across it and walls that it sees: no heat
/// stored, Nu = 0.683 Re^0.466 Pr^(1/3) for Re 40 to 4000 (Hilpert, from memory), 25 % either way.
struct WireAcross {
    double wire = 0;      // [m]
    double velocity = 0;  // [m/s]
    double gas = 0;       // [K]
    double walls = 0;     // [K]
};
double wire_temperature(const WireAcross& wire);

/// No tunnel to stand in, or wires that touch.
std::vector<FittingProblem> problems(const Grid& grid, const Stove& stove);

/// Puts the grid into the tunnel's mouth; the tunnel must be there already.
void add_fitting(StoveBuilder& builder, const Grid& grid);

/// How hot its wires get. `at`: which of the grids it is.
std::vector<FittingAnswer> answers(const Grid& grid, const Stove& stove, std::size_t at,
                                   const Results& results);

}  // namespace drawwell

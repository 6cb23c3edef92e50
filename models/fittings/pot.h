#pragma once

#include "models/fittings/kind.h"

namespace drawwell {

/// A pot of water that stands on the plate from lighting on; what boils off is topped up.
struct Pot {
    static constexpr std::string_view table = "pot";
    static constexpr std::string_view axis_meaning =
        "distance of the pot's centre from the plate's";
    std::string name;
    double diameter = 0;    // [m] of its bottom
    double height = 0;      // [m]
    double off_centre = 0;  // [m] of its centre from the plate's
    double water = 0;       // [kg]
    double metal = 0;       // [kg] of steel, pot and lid
    std::string bottom;     // flat, ordinary or dented: how near it comes to the plate
    bool open = false;      // without a lid

    double position() const { return off_centre; }
    static std::span<const ColumnInfo> columns();
};

/// Share [-] of the ring between two radii [m] that lies under a disc off the centre.
double share_under(double inner, double outer, double disc_radius, double off_centre);

/// No plate to stand on, or the pot hangs over its edge.
std::vector<FittingProblem> problems(const Pot& pot, const Stove& stove);

/// Stands the pot on the plate, which must be there already.
void add_fitting(StoveBuilder& builder, const Pot& pot);

/// When it boils, what boils off, and the heat it takes. `at`: which of the pots it is.
std::vector<FittingAnswer> answers(const Pot& pot, const Stove& stove, std::size_t at,
                                   const Results& results);

}  // namespace drawwell

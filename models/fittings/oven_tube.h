#pragma once

#include "models/components/build_up.h"
#include "models/fittings/kind.h"

namespace drawwell {

/// A level tube through the barrel beside the riser, for baking: open to the gas on its outside,
/// shut by a door at either end. What is baked is in it from lighting on.
struct OvenTube {
    static constexpr std::string_view table = "oven_tube";
    static constexpr std::string_view axis_meaning =
        "height of the tube's axis over the tunnel floor";
    std::string name;
    double bore = 0;        // [m] inside
    double height = 0;      // [m] of its axis over the tunnel floor
    BuildUp wall;           // from the oven outwards
    double food = 0;        // [kg] tins included
    double food_water = 0;  // [-] share of it that is water
    double door_gap = 0;    // [m2] open round each door

    double position() const { return height; }
    static std::span<const ColumnInfo> columns();
};

/// Length [m] of the chord through the middle of the space round the riser, where the tube lies.
double oven_tube_length(double skin_radius, double barrel_radius);

/// No barrel, no room beside the riser, or the tube reaches out of the space the gas goes through.
std::vector<FittingProblem> problems(const OvenTube& oven, const Stove& stove);

/// Lays the tube through the space round the riser, which must be there already.
void add_fitting(StoveBuilder& builder, const OvenTube& oven);

/// How hot it gets, how long it bakes, and when the food is through. `at`: which of the tubes it
/// is.
std::vector<FittingAnswer> answers(const OvenTube& oven, const Stove& stove, std::size_t at,
                                   const Results& results);

}  // namespace drawwell

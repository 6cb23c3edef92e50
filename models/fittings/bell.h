#pragma once

#include "models/components/build_up.h"
#include "models/fittings/kind.h"

namespace drawwell {

/// A chamber between barrel and flue, a bell of masonry or a second barrel: hot gas rises to its
/// top, and sinks as it cools along the walls to an outlet near the foot. Two zones, each mixed all
/// through: the half over the middle and the half below. That holds while buoyancy outweighs the
/// stream that comes in, Richardson number well over 1; bell_richardson says it.
struct Bell {
    static constexpr std::string_view table = "bell";
    static constexpr std::string_view axis_meaning = "height of the bell inside";
    static constexpr bool before_flue = true;
    std::string name;
    double diameter = 0;                      // [m] inside, of a round one; 0: width by depth
    double width = 0, depth = 0, height = 0;  // [m] inside
    double opening = 0;                       // [m] diameter of the opening the gas comes in by
    double inlet = 0, outlet = 0;             // [m] of their middles over the bell's floor
    BuildUp wall;                             // sides and top, from the gas outwards

    double position() const { return height; }
    static std::span<const ColumnInfo> columns();
};

/// No section said, openings that reach out of the bell, or no flue that leads on from it.
std::vector<FittingProblem> problems(const Bell& bell, const Stove& stove);

/// Puts the bell where the flue would begin; the flue then begins at its outlet.
void add_fitting(StoveBuilder& builder, const Bell& bell);

/// How hot it gets, what it gives the room, and how much of that after the fire. `at`: which of the
/// bells it is.
std::vector<FittingAnswer> answers(const Bell& bell, const Stove& stove, std::size_t at,
                                   const Results& results);

}  // namespace drawwell

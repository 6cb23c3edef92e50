#pragma once

#include "models/fittings/kind.h"
#include "solver/steps.h"

namespace drawwell {

/// A thick round slab of metal that lies on the plate.
struct Griddle {
    static constexpr std::string_view table = "griddle";
    static constexpr std::string_view axis_meaning =
        "distance of the griddle's centre from the plate's";
    std::string name;
    double diameter = 0;    // [m]
    double thickness = 0;   // [m]
    double off_centre = 0;  // [m] of its centre from the plate's
    std::string material;
    std::string bottom;  // flat, ordinary or dented: how near it comes to the plate

    double position() const { return off_centre; }
    Steps there() const { return Steps(1.0); }
    static std::span<const ColumnInfo> columns();
};

/// No plate to lie on, over its edge, or no room beside others.
std::vector<FittingProblem> problems(const Griddle& griddle, const Stove& stove);

/// Lays it on the plate, which must be there already: three rings of it, warm through at once, that
/// conduct among each other.
void add_fitting(StoveBuilder& builder, const Griddle& griddle);

/// When it fries, and how hot it gets. `at`: which of the griddles it is.
std::vector<FittingAnswer> answers(const Griddle& griddle, const Stove& stove, std::size_t at,
                                   const Results& results);

}  // namespace drawwell

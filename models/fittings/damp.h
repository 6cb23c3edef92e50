#pragma once

#include "models/fittings/kind.h"

namespace drawwell {

/// Water in a wall that must dry first: new masonry, cast linings, a bench after a wet winter. It
/// boils off where it is, at the boiling point, and what it took does not come back; drying in
/// days of lukewarm air and water that moves in the wall are left out.
struct Damp {
    static constexpr std::string_view table = "damp";
    static constexpr std::string_view axis_meaning = "water over the wall's dry mass";
    std::string name;
    std::string
        wall;  // the part whose layers are wet: `tunnel`, `riser`, `flue.bench`, `bell.back`
    double water = 0;  // [-] over the dry mass of each layer that is not metal

    double position() const { return water; }
    static std::span<const ColumnInfo> columns();
};

/// No such part.
std::vector<FittingProblem> problems(const Damp& damp, const Stove& stove);

/// Puts water beside each cell of the wall, which must be there already.
void add_fitting(StoveBuilder& builder, const Damp& damp);

/// How much water goes off, when the wall is dry, and the heat that takes. `at`: which of them it
/// is.
std::vector<FittingAnswer> answers(const Damp& damp, const Stove& stove, std::size_t at,
                                   const Results& results);

}  // namespace drawwell

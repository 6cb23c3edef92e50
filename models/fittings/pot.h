#pragma once

#include <vector>

#include "models/fittings/kind.h"
#include "solver/steps.h"

namespace drawwell {

/// A pot of water on the plate, from lighting on or while it is put there; off the plate it stands
/// in the room.
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
    bool topped_up = true;  // what boils off is poured in again, boiling; else it boils dry
    std::vector<double> put_on, taken_off;  // [s] after lighting, in turns

    double position() const { return off_centre; }
    /// 1 while it is on the plate, else 0.
    Steps there() const;
    static std::span<const ColumnInfo> columns();
};

/// A pot's bottom, 1 mm of steel: what a square metre weighs [kg/m2], and its heat capacity
/// [J/(kg K)], from memory.
inline constexpr double pot_bottom_mass = 7.85, pot_heat_capacity = 480;

/// The pot that stands over the plate's hole and fills it, so that gas and flame meet its bottom;
/// null: there is no hole, or a cover lies in it, or no pot covers it.
const Pot* pot_over_hole(const Stove& stove);

/// No plate to stand on, over its edge, no room beside others, over a hole it can't leave, or put
/// on and taken off out of turn.
std::vector<FittingProblem> problems(const Pot& pot, const Stove& stove);

/// Stands the pot on the plate, which must be there already.
void add_fitting(StoveBuilder& builder, const Pot& pot);

/// When it boils, what boils off, when it is dry, and the heat it takes. `at`: which of the pots it
/// is.
std::vector<FittingAnswer> answers(const Pot& pot, const Stove& stove, std::size_t at,
                                   const Results& results);

}  // namespace drawwell

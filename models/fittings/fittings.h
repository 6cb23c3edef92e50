#pragma once

#include <span>
#include <vector>

#include "models/columns.h"
#include "models/fittings/reading.h"
#include "models/stove.h"
#include "solver/results.h"

namespace drawwell {

class StoveBuilder;

/// Adds the fittings that the gas goes through between barrel and flue, in the order of the file.
void add_fittings_before_flue(StoveBuilder& builder);

/// Adds all others to a network that has its parts, in the order of the file.
void add_fittings(StoveBuilder& builder);

/// What cannot be about a stove's fittings, each with the fitting's table: `pot.kettle`.
struct TableProblem {
    std::string table;
    FittingProblem problem;
};
std::vector<TableProblem> fitting_problems(const Stove& stove);

/// Columns of every kind of fitting; each kind is an axis of its own, a fitting to a position.
std::vector<ColumnInfo> fitting_columns();

/// The axes of the kinds that a stove has.
std::vector<Axis> fitting_axes(const Stove& stove);

/// What a burn says of each fitting of a stove.
std::vector<FittingAnswer> fitting_answers(const Stove& stove, const Results& results);

/// Which answers a burn will give of each fitting of a stove; their values mean nothing.
std::vector<FittingAnswer> answers_to_come(const Stove& stove);

/// The same of a fitting of every kind, called NAME, with all the answers that its kind may give.
std::vector<FittingAnswer> answers_of_any_fitting();

}  // namespace drawwell

#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cli/study/headline.h"
#include "cli/study/run_rows.h"

namespace drawwell {

/// What a comparison on paper shows.
struct CompareLook {
    std::vector<Headline> answers;  // its columns
    std::string sort;               // answer by which rows are sorted, those that draw first
    bool as_given = false;          // in the order of the study instead
    bool base = false;              // row 0 is the stove as filed, with which the others compare
    bool colour = false;
    UnitSystem units = UnitSystem::metric;  // of what varies; answers have their own
    /// What stands under an answer of a stove; empty: nothing does.
    std::function<std::string(std::size_t stove, const Headline& headline)> below = {};
};

/// Rows sorted by what matters: those that draw without smoke, those that draw, the rest; then by
/// the answer asked for, its best first; those that failed last.
std::vector<std::size_t> sorted_rows(const std::vector<Row>& rows, const CompareLook& look);

/// The table: a row a stove, the best of each column marked *, below it what differs from the base,
/// why rows failed, and what the varied keys mean.
std::string compare_table(const Study& study, const std::vector<Row>& rows,
                          const CompareLook& look);

}  // namespace drawwell

#pragma once

#include <initializer_list>
#include <string>
#include <vector>

#include "models/burn.h"

namespace drawwell::testing {

/// A burn of the allotment-kitchen sample with keys overridden ("riser.top=1 m"), without the
/// reserve draw unless a key asks for it.
BurnOutcome burn_sample(std::initializer_list<std::string> overrides = {});

/// Mean of a column's cell between two times [s].
double mean_between(const Results& results, const char* column, double from, double to,
                    std::size_t cell = 0);

/// Least and largest value of a column over all cells and times.
double least(const Results& results, const char* column);
double largest(const Results& results, const char* column);

/// A column's value at a time [s] that is an instant of the results.
double value_at(const Results& results, const char* column, double time, std::size_t cell = 0);

}  // namespace drawwell::testing

#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "solver/results.h"

namespace drawwell {

/// An instant between two recorded rows, or on one.
struct Moment {
    std::size_t row = 0;  // the last that is not after it
    double share = 0;     // [-] of the way from there to the next row
};

/// Where a time [s] lies among increasing ones; nothing: before the first or after the last.
std::optional<Moment> moment_at(const std::vector<double>& time, double at);

/// What a column's cell is worth at a moment, straight between rows; no number where either row has
/// none.
double value_at(const Column& column, std::size_t cell, const Moment& moment);

}  // namespace drawwell

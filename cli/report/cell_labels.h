#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "solver/results.h"

namespace drawwell {

/// Where each cell of a column stands, in brackets (`[0.105m]`): its position if that tells them
/// apart, else its number (`[3]`). One empty text for a column of one value.
std::vector<std::string> cell_labels(const Results& results, const Column& column);

/// For a place that the column does not have: `; did you mean "plate_temperature[0.294m]"?`, its
/// nearest; nothing where that is no place.
std::string did_you_mean_cell(const Results& results, const Column& column, std::string_view label);

}  // namespace drawwell

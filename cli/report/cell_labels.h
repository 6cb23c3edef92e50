#pragma once

#include <string>
#include <vector>

#include "solver/results.h"

namespace drawwell {

/// Where each cell of a column stands, in brackets (`[0.105m]`): its position if that tells them
/// apart, else its number (`[3]`). One empty text for a column of one value.
std::vector<std::string> cell_labels(const Results& results, const Column& column);

}  // namespace drawwell

#pragma once

#include <optional>
#include <vector>

#include "solver/results.h"

namespace drawwell {

/// Where the cells of a column stand, as its axis says; empty if it has none.
std::vector<double> axis_positions(const Results& results, const Column& column);

/// Edges of cells that stand at these places, one more than cells: halfway between neighbours; the
/// outer ones as given, else as far from the outermost cell as its inner edge.
std::vector<double> cell_edges(const std::vector<double>& position, std::optional<double> first,
                               std::optional<double> last);

}  // namespace drawwell

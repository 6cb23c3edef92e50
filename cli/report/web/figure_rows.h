#pragma once

#include <vector>

#include "cli/report/web/page_run.h"

namespace drawwell {

/// The instants of a burn that one of its figures needs, at most so many: its lines and the edges
/// of their bands are then nowhere farther off than a line is thick, where there is room for that.
std::vector<std::size_t> figure_rows(const PageRun& run, const PagePanel& panel, std::size_t most);

}  // namespace drawwell

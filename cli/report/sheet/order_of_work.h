#pragma once

#include <string>
#include <vector>

#include "models/stove.h"

namespace drawwell {

/// How the stove goes together, a sentence or two a step. Common practice, no source; the drying
/// and the first fires as the usual caution has them.
std::vector<std::string> order_of_work(const Stove& stove);

/// Where the smoke of a stove without a flue comes out, and what follows; empty: it has one.
std::string no_flue_caution(const Stove& stove);

/// What the drawing takes for granted or found that does not go together; empty: nothing.
std::vector<std::string> drawing_remarks(const Stove& stove);

}  // namespace drawwell

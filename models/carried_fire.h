#pragma once

#include <string>
#include <vector>

#include "models/saved_state.h"
#include "models/stove.h"

namespace drawwell {

/// Leaves out the kindling that a stove has by default where an earlier run left a fire; kindling
/// that somebody asked for is lit. Whether it did.
bool spare_kindling(Stove& stove, const SavedState& from);

/// What becomes of the fuel that an earlier run left, for the report.
std::vector<std::string> carried_fire_remarks(const Stove& stove, const SavedState& from);

}  // namespace drawwell

#pragma once

#include "models/saved_state.h"

namespace H5 {
class H5File;
}

namespace drawwell {

/// Writes the group `end_state`: names of walls, inlets and left lots as text, their figures beside
/// them with `units` and `long_name`, all checksummed. Throws H5::Exception.
void write_end_state(H5::H5File& file, const SavedState& state);

}  // namespace drawwell

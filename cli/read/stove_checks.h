#pragma once

#include "cli/read/problems.h"
#include "cli/read/said.h"
#include "cli/read/stove_draft.h"

namespace drawwell {

/// Adds a problem for each impossibility of a stove whose values are all filled in: a riser through
/// the plate, a barrel narrower than the riser, wood with nowhere to burn.
void check_stove(const StoveDraft& draft, const Said& said, Problems& problems);

/// Adds a problem for each thing said twice in different ways, before the defaults are filled in.
void check_contradictions(const Said& said, Problems& problems);

}  // namespace drawwell

#pragma once

#include "cli/commands/find_quest.h"
#include "cli/study/find_several.h"
#include "cli/study/sensitivity.h"
#include "models/library.h"

namespace drawwell {

/// The same goal, of several keys.
SeveralSearch::Goal several_goal(Search::Goal goal);

/// Seeks the quest's key and those of --vary together, and prints what it came to. InputError: a
/// --vary that is no span.
void find_together(const Quest& quest, const FindOptions& options, const Study& study,
                   const Library& library, const Compute& compute);

}  // namespace drawwell

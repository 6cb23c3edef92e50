#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "cli/commands/find_quest.h"
#include "cli/report/page_writer.h"
#include "cli/study/sensitivity.h"

namespace drawwell {

/// The headlines of what was found.
void tell_answers(const Row& row, UnitSystem units, Page& page);

/// Which of the conditions, or the target, that row has no answer to.
void tell_unanswered(const std::vector<Condition>& where, const std::optional<Condition>& target,
                     const Row& row, Page& page);

/// How far `what` (`It`, an answer) moves with the three inputs that move it most; `shifts` sorted
/// so: the input's name, and by how much with its sign.
void tell_shifts(const std::string& what,
                 const std::vector<std::pair<std::string, std::string>>& shifts, Page& page);

/// What was found, burned on so many days and fires as the options say, if they do.
void tell_days(std::vector<Override> settings, const Study& study, const FindOptions& options,
               const Compute& compute, Page& page);

/// How many of the stoves that were looked at could not be, and why.
void tell_failures(const std::vector<std::string>& failures, Page& page);

}  // namespace drawwell

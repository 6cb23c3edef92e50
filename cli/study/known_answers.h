#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/study/run_rows.h"

namespace drawwell {

/// InputError: no burn gives an answer of that name, with the nearest that is; or, where a number
/// is wanted, it is told in words. Those of fittings (`pot.kettle/steam_kg`) hang on the stove and
/// pass.
void check_answer(std::string_view answer, bool number = false);

/// InputError: none of the study's stoves gives an answer of that name, with the nearest that one
/// gives. Before anything is burned; stoves that can't be read are passed over.
void check_answers(const std::vector<std::string>& answers, const Study& study,
                   const Library& library);

}  // namespace drawwell

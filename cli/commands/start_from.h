#pragma once

#include <string>
#include <vector>

#include "cli/report/read_end_state.h"
#include "models/stove.h"

namespace CLI {
class App;
}

namespace drawwell {

/// `--start-from FILE`: the run that a burn begins from.
void add_start_option(CLI::App& command, std::string& file);

/// Makes a stove ready to begin from that run: no kindling by default where embers are left. What
/// there is to say about it, for the page.
std::vector<std::string> begin_from(const EndState& start, Stove& stove);

/// Which run that was, in words for the page.
std::string begun_from(const EndState& start, const std::string& file);

}  // namespace drawwell

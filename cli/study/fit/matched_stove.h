#pragma once

#include <string>
#include <vector>

#include "cli/study/fit/match_log.h"

namespace drawwell {

/// A stove file with what a match found set in it.
struct MatchedStove {
    std::string text;
    std::vector<std::string> set;    // keys that were set
    std::vector<std::string> unset;  // what a stove file can't say: `aes_board.conductivity x 1.12`
};

/// Sets in a stove file's text the keys that were fitted, outdoor temperature, air pressure and
/// wood's moisture; keeps all else as it stands, with a remark at the top of what was matched and
/// of what the file can't say. `overrides` of the command line are set as well. InputError: a key
/// stands where it can't be replaced, or the result is no stove.
MatchedStove matched_stove(const StoveText& file, const std::vector<Override>& overrides,
                           const Library& library, const Match& match, const std::string& log);

}  // namespace drawwell

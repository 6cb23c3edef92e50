#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/read/overrides.h"
#include "models/stove.h"

namespace drawwell {

/// A dimension that follows from others in every variant: `plate.underside = riser.top + 45mm`.
struct Follow {
    std::string key;
    std::string formula;
};

/// Reads one. InputError: no "=", no such key, a key that is no single figure, or a formula that
/// `work_out` refuses in every stove.
Follow parse_follow(std::string_view text);

/// InputError: a key is said by two formulas, or follows and is varied.
void check_follows(const std::vector<Follow>& follows, const std::vector<std::string>& varied);

/// What it comes to in a stove. Every height counts from the tunnel floor. InputError: the formula
/// can't be worked out there.
Override followed(const Follow& follow, const Stove& stove);

}  // namespace drawwell

#pragma once

#include <string>
#include <string_view>

#include "cli/read/overrides.h"
#include "models/stove.h"

namespace drawwell {

/// A dimension that follows from others in every variant: `plate.underside = riser.top + 45mm`.
struct Follow {
    std::string key;
    std::string formula;
};

/// Reads one. InputError: no "=", no such key, or a key that is no single figure.
Follow parse_follow(std::string_view text);

/// What it comes to in a stove: key names stand for their values, numbers may carry units. Every
/// height counts from the tunnel floor. InputError: the formula can't be worked out.
Override followed(const Follow& follow, const Stove& stove);

}  // namespace drawwell

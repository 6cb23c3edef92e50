#pragma once

#include <span>
#include <string>
#include <string_view>

#include "cli/read/problems.h"
#include "cli/read/raw_value.h"

namespace drawwell {

/// `--set KEY=VALUE`; beats what the file says.
struct Override {
    std::string key;
    std::string value;
    std::string typed = {};  // as the user wrote it, for messages; empty: `--set KEY=VALUE`
};

/// Splits "riser.top=600 mm". InputError if there is no "=".
Override parse_override(std::string_view text);

/// Puts overrides into the place of what the file says. An override of `wood.*` also replaces what
/// the file says of that for single loads; heat.power or burn_rate.table replaces loads and
/// kindling; schedule.load replaces every load.NAME.at, and load.NAME.at that load's rows of
/// schedule.load; one of flue.NAME.direction and rise, or site.altitude and pressure, replaces the
/// other.
void apply_overrides(RawFile& file, std::span<const Override> overrides, Problems& problems);

}  // namespace drawwell

#pragma once

#include <optional>
#include <string_view>

#include "cli/read/raw_value.h"

namespace drawwell {

/// Where a TOML text holds a letter or sign beyond ASCII that stands neither in quotes nor in a
/// remark, nor behind a backslash that ends a line in quotes. TOML allows none there, and
/// toml++ 3.3 is not made for them: its behaviour is undefined. Nothing: nowhere.
std::optional<Place> beyond_ascii_unquoted(std::string_view text);

}  // namespace drawwell

#pragma once

#include <optional>

#include "cli/read/keys.h"
#include "cli/read/problems.h"
#include "models/library.h"

namespace drawwell {

/// Understands the value of an entry as its key wants it. Nothing, and at least one more problem,
/// if it can't be. `lit_at` [s after midnight] is when the stove is lit by the clock, if that is
/// said.
std::optional<Value> read_value(const Key& key, const Entry& entry, const Library& library,
                                Problems& problems, std::optional<double> lit_at = {});

}  // namespace drawwell

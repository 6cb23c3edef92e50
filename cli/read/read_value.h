#pragma once

#include <optional>

#include "cli/read/keys.h"
#include "cli/read/problems.h"
#include "models/library.h"

namespace drawwell {

/// Understands the value of an entry as its key wants it. Nothing, and at least one more problem,
/// if it can't be.
std::optional<Value> read_value(const Key& key, const Entry& entry, const Library& library,
                                Problems& problems);

}  // namespace drawwell

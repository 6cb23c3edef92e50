#pragma once

#include <string>

#include "models/stove.h"

namespace drawwell {

/// The stove as a file that says every key with the value used; read_stove makes the same stove of
/// it.
std::string resolved_text(const Stove& stove);

}  // namespace drawwell

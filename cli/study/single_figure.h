#pragma once

#include <optional>
#include <string_view>

#include "cli/read/keys.h"

namespace drawwell {

/// Whether a key takes one figure with a unit: a quantity, or what may change in time said once.
bool takes_figure(const Key& key);

/// The figure [SI] that a stove has there; nothing where it has none, or one that changes in time.
std::optional<double> figure_of(const Stove& stove, std::string_view key);

}  // namespace drawwell

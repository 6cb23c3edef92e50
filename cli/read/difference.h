#pragma once

#include <string_view>

#include "cli/read/units.h"

namespace drawwell {

/// "2K", "1.8 °F", "10 g" as a difference in SI: 10 °C more are 10 K more. InputError as
/// parse_quantity has it.
double parse_difference(std::string_view text, Quantity quantity);

}  // namespace drawwell

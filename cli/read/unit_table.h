#pragma once

#include <span>
#include <string_view>

#include "cli/read/units.h"

namespace drawwell {

/// SI value = factor * (number + offset).
struct Unit {
    std::string_view name;
    Quantity quantity;
    double factor;
    double offset = 0;
    bool listed = true;  // false: another spelling of a listed one
};

/// Every unit with its conversion factor, a quantity's usual one first.
std::span<const Unit> all_units();

}  // namespace drawwell

#pragma once

#include <optional>
#include <string>

namespace drawwell {

/// What a builder has; what is missing is chosen to suit.
struct BuildersStock {
    std::optional<double> bore;         // [m] inside diameter of the riser, 0.08 to 0.25
    std::optional<double> drum_volume;  // [m3] nominal, 0.03 to 0.21
};

/// A commented stove file to start from, sized by common practice, with the standing cautions.
/// A drum too narrow for the bore is replaced by the smallest that does, and the file says so.
/// InputError if the stock is outside its range.
std::string starting_stove(const BuildersStock& stock);

}  // namespace drawwell

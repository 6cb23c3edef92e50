#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace drawwell {

/// How many letters must be added, dropped, changed or swapped with their neighbour to turn one
/// word into the other (optimal string alignment).
std::size_t edit_distance(std::string_view a, std::string_view b);

/// The closest of the known words, or empty if none is close enough to be what was meant.
std::string nearest(std::string_view word, std::span<const std::string> known);

/// `; did you mean "..."?`, or nothing.
std::string did_you_mean(std::string_view word, std::span<const std::string> known);

}  // namespace drawwell

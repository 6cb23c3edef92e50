#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace drawwell {

/// How many letters must be added, dropped, changed or swapped with their neighbour to turn one
/// word into the other (optimal string alignment).
std::size_t edit_distance(std::string_view a, std::string_view b);

/// The closest of the known words, or empty if none is close enough to be what was meant.
std::string nearest(std::string_view word, std::span<const std::string> known);

/// `; did you mean "..."?`, or nothing.
std::string did_you_mean(std::string_view word, std::span<const std::string> known);

/// The names in a map by name.
template <class Map>
std::vector<std::string> names_of(const Map& map) {
    std::vector<std::string> names;
    names.reserve(map.size());
    for (const auto& [name, _] : map) names.push_back(name);
    return names;
}

/// InputError: the word is none of the known ones; says which was meant, or else all of them after
/// `what` they are: `a material:`.
[[noreturn]] void refuse_unknown(std::string_view word, std::span<const std::string> known,
                                 std::string_view what);

}  // namespace drawwell

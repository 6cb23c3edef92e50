#pragma once

#include <string>
#include <vector>

#include "models/library.h"

namespace drawwell {

/// The tables of data/ as compiled in: materials, woods, build-ups, fuel bed.
/// InputError names the file and the key, if a table is damaged.
Library read_library();

/// A wall by name, as data/build_ups.toml has it.
struct NamedBuildUp {
    std::string name, meaning, source;
    std::vector<std::string> layers;  // from the gas outwards, as a stove file writes them
};

/// Every one of them, in alphabetical order. InputError as above.
std::vector<NamedBuildUp> read_build_ups();

}  // namespace drawwell

#pragma once

#include <string>
#include <vector>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/stove.h"
#include "solver/errors.h"
#include "tests/cli/scratch_folder.h"
#include "validation/random_stoves/random_stove.h"

namespace drawwell::tests {

inline const Library& sheet_library() {
    static const Library library = read_library();
    return library;
}

inline Stove sheet_stove(const std::string& text, const std::vector<Override>& sets = {}) {
    return read_stove(text, "s.toml", sets, sheet_library());
}

/// One of data/stoves.
inline Stove sample_stove(const std::string& name,
                          std::initializer_list<std::string_view> sets = {}) {
    std::vector<Override> overrides;
    for (const std::string_view set : sets) overrides.push_back(parse_override(set));
    return sheet_stove(bytes_of(std::string(DRAWWELL_SOURCES) + "/data/stoves/" + name + ".toml"),
                       overrides);
}

/// A made-up stove; nothing where it can't be built.
inline std::optional<Stove> made_up_stove(std::uint32_t index) {
    try {
        return sheet_stove(random_stove(stove_seed, index));
    } catch (const InputError&) {
        return {};
    }
}

/// No barrel, no plate, no flue, no tunnel: a pipe over a source of heat.
inline constexpr const char* bare_stove =
    "[riser]\nbore = \"100 mm\"\ntop = \"1 m\"\n[heat]\npower = \"2 kW\"\n";

}  // namespace drawwell::tests

#pragma once

#include <filesystem>
#include <string>

#include "models/saved_state.h"

namespace drawwell {

/// The state an earlier run ended in, and which run that was.
struct EndState {
    SavedState state;
    std::string created;   // when that run was computed, UTC
    bool complete = true;  // false: it was stopped before its end
};

/// Reads it from a result file. FileError: the file cannot be read. InputError: it is no result of
/// this program, of a later layout or of another model version, without an end state, or damaged.
EndState read_end_state(const std::filesystem::path& file);

}  // namespace drawwell

#pragma once

#include <string>
#include <vector>

namespace drawwell {

/// Where a result came from; stored with it so that it can be computed again.
struct RunRecord {
    std::string title;                   // of the stove
    std::string stove_name;              // the stove file as it was named
    std::string stove_text;              // its text
    std::string stove_resolved;          // every key with the value used
    std::vector<std::string> overrides;  // KEY=VALUE, in the order they were applied
    std::string created;                 // when, UTC, as 2026-01-31T12:00:00Z
    std::string started_from;            // result file it begins from, as it was named; empty: cold
    std::string started_from_created;    // when that run was computed
    bool complete = true;                // false: the burn was stopped before its end
};

/// The present moment in the form of `created`.
std::string utc_now();

}  // namespace drawwell

#pragma once

#include <string>
#include <vector>

namespace drawwell {

/// Where a result came from; stored with it so that it can be computed again.
struct RunRecord {
    std::string title;                   // of the stove
    std::string stove_name;              // the stove file as it was named
    std::string stove_text;              // its text, but of absolute paths only the last part
    std::string stove_resolved;          // every key with the value used
    std::vector<std::string> overrides;  // KEY=VALUE, in the order they were applied
    std::string created;                 // when, UTC, as 2026-01-31T12:00:00Z
    std::string started_from;            // result file it begins from, as it was named; empty: cold
    std::string started_from_created;    // when that run was computed
    bool complete = true;                // false: the burn was stopped before its end
};

/// A file's name as results and pages tell it, which may be handed on: as it was named, but of an
/// absolute path, which would tell how its owner's machine is laid out, only the last part.
std::string told_name(const std::string& file);

/// The same of several, told apart: those that would be called alike have as many of their folders
/// before them as that takes, an absolute path never all of them.
std::vector<std::string> told_names(const std::vector<std::string>& files);

/// A text that names files, with each of them by the name it is told by.
std::string told_text(std::string text, const std::vector<std::string>& files);

/// The present moment in the form of `created`.
std::string utc_now();

}  // namespace drawwell

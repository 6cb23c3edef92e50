#pragma once

#include <filesystem>
#include <string>

namespace drawwell {

/// Refuses a file that could not be written, and one that may not be replaced: it exists, is not
/// `ours` and is not forced. FileError, InputError.
void check_target(const std::filesystem::path& file, bool ours, bool force);

/// Where a result goes: `output` if given, else the stove file's name with `ending` ("-draw.svg"),
/// or `unnamed` if the stove came from standard input; both in the current folder.
std::filesystem::path result_target(const std::string& output, const std::string& stove,
                                    const std::string& ending, const std::string& unnamed);

/// Where the table beside a result goes: `file` if given, else the result's name with .csv.
/// InputError: both would be one file.
std::filesystem::path table_target(const std::string& file, const std::filesystem::path& result);

}  // namespace drawwell

#pragma once

#include <string>
#include <vector>

namespace drawwell {

/// Whether a program of that name is on the PATH.
bool is_installed(const std::string& program);

/// Runs a program with its arguments, no shell between; its output is dropped. Gives its exit code,
/// or -1 if it could not be run or was killed.
int run_tool(const std::vector<std::string>& words);

}  // namespace drawwell

#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell report RUN.h5...`: one or several results as a page for a browser.
void add_report_command(CLI::App& app);

/// Where the page of a result goes: `file` if given, else the result's name with .html.
std::filesystem::path page_target(const std::string& file, const std::filesystem::path& result);

/// Writes the page of results; `log`: what was noted during the first of them (CSV). FileError,
/// InputError.
void write_report(const std::filesystem::path& page, const std::vector<std::string>& results,
                  const std::string& log = {});

}  // namespace drawwell

#include "cli/commands/read_text.h"

#include <cerrno>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>
#include <system_error>

#include "cli/report/pending_file.h"

namespace drawwell {

std::string read_text(const std::string& name) {
    std::ostringstream text;
    if (name == "-") {
        text << std::cin.rdbuf();
        return text.str();
    }
    std::error_code ignored;
    if (std::filesystem::is_directory(name, ignored))
        throw FileError("cannot read " + name + " (it is a folder)");
    errno = 0;
    const std::ifstream stream(name, std::ios::binary);
    if (!stream.is_open())
        throw FileError("cannot read " + name + " (" + std::generic_category().message(errno) +
                        ")");
    text << stream.rdbuf();
    return text.str();
}

}  // namespace drawwell

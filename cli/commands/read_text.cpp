#include "cli/commands/read_text.h"

#include <cerrno>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <system_error>

#include "cli/report/pending_file.h"

namespace drawwell {

std::string read_text(const std::string& name) {
    if (name == "-") return {std::istreambuf_iterator<char>(std::cin), {}};
    std::error_code ignored;
    if (std::filesystem::is_directory(name, ignored))
        throw FileError("cannot read " + name + " (it is a folder)");
    errno = 0;
    std::ifstream stream(name, std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(stream), {}};
    if (!stream.is_open() || stream.bad())
        throw FileError("cannot read " + name + " (" + std::generic_category().message(errno) +
                        ")");
    return text;
}

}  // namespace drawwell

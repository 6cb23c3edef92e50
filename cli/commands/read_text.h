#pragma once

#include <string>

namespace drawwell {

/// The text of a file, or of standard input if the name is `-`. FileError.
std::string read_text(const std::string& name);

}  // namespace drawwell

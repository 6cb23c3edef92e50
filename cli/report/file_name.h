#pragma once

#include <filesystem>
#include <string>

namespace drawwell {

/// The file beside another whose name has that ending in place of its own: `kitchen.h5` with ".csv"
/// is `kitchen.csv`. A name that would pass 255 bytes, which is what file systems take, is cut and
/// told apart from others by a number.
std::filesystem::path with_ending(const std::filesystem::path& file, const std::string& ending);

}  // namespace drawwell

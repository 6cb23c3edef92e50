#pragma once

#include <filesystem>
#include <stdexcept>
#include <string>
#include <string_view>

namespace drawwell {

/// A file or folder that cannot be read or written; the message names it and says why.
class FileError : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// "cannot write kitchen.h5 (No space left on device)"; `error` is an `errno`.
FileError file_error(const std::string& what, const std::filesystem::path& file, int error);

/// Writes a file by way of another one, which takes its name only when it is whole and on the disk:
/// until then, and after any failure (full disk, quota, size limit), an earlier file stays as it is
/// and nothing is left beside it. What a symlink names is written, the link stays. FileError.
void write_whole(const std::filesystem::path& target, std::string_view bytes);

/// FileError unless a file of that name could be written now; leaves nothing behind.
void check_writable(const std::filesystem::path& target);

/// The file that a name stands for: what a symlink names, whether or not that exists yet.
/// FileError: links go round in a circle.
std::filesystem::path behind_links(const std::filesystem::path& file);

/// FileError unless the file can be opened for reading.
void require_readable(const std::filesystem::path& file);

}  // namespace drawwell

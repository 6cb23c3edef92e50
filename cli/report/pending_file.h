#pragma once

#include <filesystem>
#include <stdexcept>
#include <string_view>

namespace drawwell {

/// A file or folder that cannot be read or written; the message names it and says why.
class FileError : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// A file written beside its final name, which it takes only when it is whole.
class PendingFile {
  public:
    /// Creates an empty file in the target's folder; FileError if that is not possible.
    explicit PendingFile(std::filesystem::path target);
    /// Removes what was not committed.
    ~PendingFile();
    PendingFile(const PendingFile&) = delete;
    PendingFile& operator=(const PendingFile&) = delete;

    /// Where to write meanwhile.
    const std::filesystem::path& path() const { return pending_; }
    /// Flushes to disk and replaces the target in one step; FileError, the target untouched.
    void commit();

  private:
    std::filesystem::path target_;
    std::filesystem::path pending_;
};

/// Writes a text; the file replaces an earlier one only when it is whole. FileError.
void write_whole(const std::filesystem::path& target, std::string_view text);

/// FileError unless the file can be opened for reading.
void require_readable(const std::filesystem::path& file);

/// FileError unless a file of that name could be written now; leaves nothing behind.
void check_writable(const std::filesystem::path& target);

}  // namespace drawwell

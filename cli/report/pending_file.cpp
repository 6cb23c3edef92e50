#include "cli/report/pending_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <fstream>
#include <string>
#include <system_error>
#include <utility>

namespace drawwell {
namespace {

FileError failure(const std::string& what, const std::filesystem::path& file, int error) {
    return FileError(what + " " + file.string() + " (" + std::generic_category().message(error) +
                     ")");
}

/// Sees that what was written to a file or folder is on the disk.
void flush(const std::filesystem::path& file, int flags) {
    const int descriptor = ::open(file.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) throw failure("cannot open", file, errno);
    const int error = ::fsync(descriptor) == 0 ? 0 : errno;
    ::close(descriptor);
    // Some file systems cannot flush a folder and say so with EINVAL.
    if (error != 0 && error != EINVAL) throw failure("cannot write", file, error);
}

std::filesystem::path folder_of(const std::filesystem::path& file) {
    return file.has_parent_path() ? file.parent_path() : std::filesystem::path(".");
}

}  // namespace

PendingFile::PendingFile(std::filesystem::path target)
    : target_(std::move(target)),
      pending_(target_.string() + "." + std::to_string(::getpid()) + ".tmp") {
    std::error_code ignored;
    if (std::filesystem::is_directory(target_, ignored))
        throw failure("cannot write", target_, EISDIR);
    const int descriptor = ::open(pending_.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0666);
    if (descriptor < 0) throw failure("cannot write", target_, errno);
    ::close(descriptor);
}

PendingFile::~PendingFile() {
    if (pending_.empty()) return;
    std::error_code ignored;
    std::filesystem::remove(pending_, ignored);
}

void PendingFile::commit() {
    flush(pending_, O_RDWR);
    if (::rename(pending_.c_str(), target_.c_str()) != 0)
        throw failure("cannot write", target_, errno);
    pending_.clear();
    flush(folder_of(target_), O_RDONLY | O_DIRECTORY);
}

void write_whole(const std::filesystem::path& target, std::string_view text) {
    PendingFile pending(target);
    std::ofstream stream(pending.path(), std::ios::binary);
    stream << text;
    stream.close();
    if (!stream) throw FileError("cannot write " + target.string());
    pending.commit();
}

void require_readable(const std::filesystem::path& file) {
    std::error_code ignored;
    if (std::filesystem::is_directory(file, ignored))
        throw FileError("cannot read " + file.string() + " (it is a folder)");
    errno = 0;
    if (!std::ifstream(file, std::ios::binary).is_open())
        throw FileError("cannot read " + file.string() + " (" +
                        std::generic_category().message(errno) + ")");
}

void check_writable(const std::filesystem::path& target) {
    const PendingFile probe(target);
}

}  // namespace drawwell

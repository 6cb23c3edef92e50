#include "cli/report/pending_file.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <fstream>
#include <random>
#include <system_error>

#include "cli/report/descriptor.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

fs::path folder_of(const fs::path& file) {
    return file.has_parent_path() ? file.parent_path() : fs::path(".");
}

/// A name in that folder which no other run will choose, short wherever the target's is long.
fs::path passing_name(const fs::path& folder) {
    std::random_device random;
    return folder / fmt::format(".drawwell-{:08x}{:08x}", random(), random());
}

/// A file on its way to its name. Where the file system can, it has none meanwhile, so that not
/// even a killed run leaves it behind.
class PendingFile {
  public:
    explicit PendingFile(const fs::path& target)
        : target_(behind_links(target)), folder_(folder_of(target_)) {
        struct stat earlier = {};
        const int missing = ::stat(target_.c_str(), &earlier) == 0 ? 0 : errno;
        const bool replaces = missing == 0;
        if (replaces && S_ISDIR(earlier.st_mode)) fail(EISDIR);
        if (replaces && !S_ISREG(earlier.st_mode))
            throw FileError("cannot write " + target_.string() + " (it is not a plain file)");
        // Replacing it needs no right to write in it; one that is locked was meant to stay.
        if (replaces && ::access(target_.c_str(), W_OK) != 0) fail(errno);
        // The name is tried now, not after hours of computing: it may be too long.
        if (!replaces && missing != ENOENT) fail(missing);
        open();
        if (replaces) ::fchmod(file_.number(), earlier.st_mode & 07777);
    }
    ~PendingFile() {
        if (!pending_.empty()) ::unlink(pending_.c_str());
    }
    PendingFile(const PendingFile&) = delete;
    PendingFile& operator=(const PendingFile&) = delete;

    void commit(std::string_view bytes) {
        check(file_.write(bytes));
        check(file_.flush());
        if (pending_.empty()) {
            const fs::path name = passing_name(folder_);
            if (::linkat(AT_FDCWD, own_path().c_str(), AT_FDCWD, name.c_str(), AT_SYMLINK_FOLLOW) !=
                0)
                fail(errno);
            pending_ = name;
        }
        check(file_.close());  // some file systems tell only now that the disk is full
        if (::rename(pending_.c_str(), target_.c_str()) != 0) fail(errno);
        pending_.clear();
        // A folder that may not be read can't be flushed; the file is there all the same.
        const Descriptor folder(::open(folder_.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
        if (folder.open()) check(folder.flush());
    }

  private:
    void open() {
        file_ = Descriptor(::open(folder_.c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC, 0666));
        if (file_.open() && ::access(own_path().c_str(), F_OK) == 0) return;
        const fs::path name = passing_name(folder_);
        file_ = Descriptor(::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
        if (!file_.open()) fail(errno);
        pending_ = name;
    }
    std::string own_path() const { return fmt::format("/proc/self/fd/{}", file_.number()); }
    [[noreturn]] void fail(int error) const { throw file_error("cannot write", target_, error); }
    void check(int error) const {
        if (error != 0) fail(error);
    }

    fs::path target_, folder_;
    fs::path pending_;  // its name meanwhile; empty: it has none
    Descriptor file_;
};

}  // namespace

FileError file_error(const std::string& what, const fs::path& file, int error) {
    return FileError(
        fmt::format("{} {} ({})", what, file.string(), std::generic_category().message(error)));
}

void write_whole(const fs::path& target, std::string_view bytes) {
    PendingFile(target).commit(bytes);
}

void check_writable(const fs::path& target) {
    const PendingFile probe(target);
}

fs::path behind_links(const fs::path& file) {
    constexpr int most_links = 40;  // as the kernel follows
    fs::path at = file;
    std::error_code ignored;
    for (int links = 0; fs::is_symlink(at, ignored); ++links) {
        if (links == most_links) throw file_error("cannot write", file, ELOOP);
        // An absolute one replaces the folder.
        at = folder_of(at) / fs::read_symlink(at, ignored);
    }
    return at;
}

void require_readable(const fs::path& file) {
    std::error_code ignored;
    if (fs::is_directory(file, ignored))
        throw FileError("cannot read " + file.string() + " (it is a folder)");
    errno = 0;
    if (!std::ifstream(file, std::ios::binary).is_open())
        throw file_error("cannot read", file, errno);
}

}  // namespace drawwell

#include "cli/commands/run_folder.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdlib>
#include <sstream>
#include <system_error>
#include <vector>

#include "cli/report/pending_file.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view prefix = "drawwell-run-";
constexpr const char* mark_name = "drawwell-mark";

/// Told in the mark: elsewhere a lock says nothing about the runs of this machine.
std::string first_line() {
    std::array<char, 256> host{};
    ::gethostname(host.data(), host.size() - 1);
    return fmt::format("files of a drawwell at work on {}\n", host.data());
}

std::string text_of(const Descriptor& file) {
    std::string text(65536, '\0');
    const ssize_t size = ::pread(file.number(), text.data(), text.size(), 0);
    text.resize(size < 0 ? 0 : static_cast<std::size_t>(size));
    return text;
}

/// The names that a mark tells; whole lines only.
std::vector<std::string> names_in(const std::string& mark) {
    std::istringstream lines(mark.substr(0, mark.rfind('\n') + 1));
    std::vector<std::string> names;
    std::string line;
    std::getline(lines, line);  // the first, told above
    while (std::getline(lines, line))
        if (!line.empty() && line != "." && line != ".." && line.find('/') == std::string::npos)
            names.push_back(line);
    return names;
}

/// Removes what the mark names, the mark and the folder. What else is there keeps both.
void clear(const fs::path& folder, const Descriptor& mark) {
    std::error_code ignored;
    for (const std::string& name : names_in(text_of(mark))) fs::remove_all(folder / name, ignored);
    const auto left = std::distance(fs::directory_iterator(folder, ignored), {});
    if (left > 1) return;
    fs::remove(folder / mark_name, ignored);
    fs::remove(folder, ignored);
}

}  // namespace

void clear_run_folders(const fs::path& parent) {
    std::error_code failed;
    for (fs::directory_iterator each(parent, failed), end; !failed && each != end;
         each.increment(failed)) {
        std::error_code unknown;
        if (!each->path().filename().string().starts_with(prefix)) continue;
        if (each->is_symlink(unknown) || !each->is_directory(unknown)) continue;
        const Descriptor mark(
            ::open((each->path() / mark_name).c_str(), O_RDONLY | O_NOFOLLOW | O_CLOEXEC));
        if (!mark.open() || ::flock(mark.number(), LOCK_EX | LOCK_NB) != 0) continue;
        if (text_of(mark).starts_with(first_line())) clear(each->path(), mark);
    }
}

RunFolder::RunFolder() {
    const fs::path parent = fs::temp_directory_path();
    clear_run_folders(parent);
    std::string name = (parent / prefix).string() + "XXXXXX";
    if (!mkdtemp(name.data()))
        throw file_error("cannot make a folder for passing files in", parent, errno);
    folder_ = name;
    mark_ = Descriptor(::open((folder_ / mark_name).c_str(),
                              O_RDWR | O_CREAT | O_EXCL | O_APPEND | O_CLOEXEC, 0600));
    // Empty until it is locked: nobody takes it for that of a dead run.
    const bool locked = mark_.open() && ::flock(mark_.number(), LOCK_EX) == 0;
    const int error = locked ? mark_.write(first_line()) : errno;
    if (error == 0) return;
    const FileError failure = file_error("cannot write", folder_ / mark_name, error);
    clear(folder_, mark_);
    throw failure;
}

RunFolder::~RunFolder() {
    clear(folder_, mark_);
}

fs::path RunFolder::place(const std::string& name) {
    if (const int error = mark_.write(name + "\n"); error != 0)
        throw file_error("cannot write", folder_ / mark_name, error);
    return folder_ / name;
}

}  // namespace drawwell

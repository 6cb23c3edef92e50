#include "cli/commands/same_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cctype>
#include <cstdlib>
#include <optional>
#include <string>
#include <utility>

#include "cli/report/pending_file.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

using FileId = std::pair<dev_t, ino_t>;

std::optional<FileId> id_of(const fs::path& file) {
    struct stat found {};
    if (::stat(file.c_str(), &found) != 0) return {};
    return FileId{found.st_dev, found.st_ino};
}

fs::path folder_of(const fs::path& file) {
    return file.has_parent_path() ? file.parent_path() : fs::path(".");
}

/// Whether some file system could take them for one: they differ in the case of letters, or in
/// letters that ASCII has not.
bool alike(const std::string& a, const std::string& b) {
    const auto letter = [](char c) { return std::tolower(static_cast<unsigned char>(c)); };
    const auto foreign = [](char c) { return static_cast<unsigned char>(c) > 127; };
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [&](char x, char y) { return letter(x) == letter(y); }) ||
           (std::any_of(a.begin(), a.end(), foreign) && std::any_of(b.begin(), b.end(), foreign));
}

}  // namespace

bool takes_for_one(const fs::path& folder, const fs::path& a, const fs::path& b) {
    std::string trial = (folder / ".drawwell-XXXXXX").string();
    if (!::mkdtemp(trial.data())) return false;
    const fs::path first = fs::path(trial) / a, second = fs::path(trial) / b;
    const int made = ::open(first.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (made >= 0) ::close(made);
    const bool one = made >= 0 && ::access(second.c_str(), F_OK) == 0;
    ::unlink(first.c_str());
    ::rmdir(trial.c_str());
    return one;
}

bool same_file(const fs::path& a, const fs::path& b, const NameJudge& one_name) {
    const std::optional<FileId> there = id_of(a), here = id_of(b);
    if (there && here) return *there == *here;
    const fs::path end_a = behind_links(a), end_b = behind_links(b);
    const std::string name_a = end_a.filename().string(), name_b = end_b.filename().string();
    const fs::path folder = folder_of(end_a);
    const std::optional<FileId> id = id_of(folder);
    if (!id) return end_a.lexically_normal() == end_b.lexically_normal();
    if (id != id_of(folder_of(end_b))) return false;
    return name_a == name_b || (alike(name_a, name_b) && one_name(folder, name_a, name_b));
}

}  // namespace drawwell

#include "cli/report/run_record.h"

#include <algorithm>
#include <array>
#include <ctime>
#include <filesystem>

namespace drawwell {
namespace {

namespace fs = std::filesystem;

/// The last parts of a path, so many; of a relative one all if there are no more.
std::string tail_of(const std::string& file, std::size_t parts) {
    const fs::path path = fs::path(file).relative_path();
    const auto all = static_cast<std::size_t>(std::distance(path.begin(), path.end()));
    fs::path tail;
    for (auto part =
             std::next(path.begin(), static_cast<std::ptrdiff_t>(all - std::min(parts, all)));
         part != path.end(); ++part)
        tail /= *part;
    return tail.string();
}

}  // namespace

std::string told_name(const std::string& file) {
    return fs::path(file).is_absolute() ? fs::path(file).filename().string() : file;
}

std::string told_text(std::string text, const std::vector<std::string>& files) {
    for (const std::string& file : files) {
        const std::string name = told_name(file);
        if (name == file || name.empty()) continue;
        for (std::size_t at = text.find(file); at != std::string::npos;
             at = text.find(file, at + name.size()))
            text.replace(at, file.size(), name);
    }
    return text;
}

std::vector<std::string> told_names(const std::vector<std::string>& files) {
    std::vector<std::string> names;
    for (const std::string& file : files) names.push_back(told_name(file));
    for (std::size_t parts = 2; parts < 100; ++parts) {
        std::vector<std::size_t> alike;
        for (std::size_t i = 0; i < files.size(); ++i)
            for (std::size_t k = 0; k < files.size(); ++k)
                if (files[i] != files[k] && names[i] == names[k] &&
                    fs::path(files[i]).is_absolute())
                    alike.push_back(i);
        if (alike.empty()) break;
        for (const std::size_t i : alike) names[i] = tail_of(files[i], parts);
    }
    return names;
}

std::string utc_now() {
    const std::time_t now = std::time(nullptr);
    std::tm parts{};
    gmtime_r(&now, &parts);
    std::array<char, 32> text{};
    const std::size_t length =
        std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:%SZ", &parts);
    return {text.data(), length};
}

}  // namespace drawwell

#include "cli/report/file_name.h"

#include <fmt/format.h>

#include <cstdint>

namespace drawwell {
namespace {

constexpr std::size_t longest_name = 255;  // [bytes]

/// The same on every machine, hence no std::hash (this is FNV-1a).
std::uint32_t number_of(const std::string& text) {
    std::uint32_t number = 2166136261U;
    for (const char byte : text) number = (number ^ static_cast<unsigned char>(byte)) * 16777619U;
    return number;
}

bool amid_letter(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

}  // namespace

std::filesystem::path with_ending(const std::filesystem::path& file, const std::string& ending) {
    std::string stem = file.stem().string();
    if (stem.size() + ending.size() > longest_name) {
        const std::string number = fmt::format("~{:08x}", number_of(stem));
        std::size_t kept = longest_name - ending.size() - number.size();
        while (kept > 0 && amid_letter(stem[kept])) --kept;
        stem = stem.substr(0, kept) + number;
    }
    return file.parent_path() / (stem + ending);
}

}  // namespace drawwell

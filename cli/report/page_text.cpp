#include "cli/report/page_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/units.h"

namespace drawwell {
namespace {

/// Characters, not bytes, of UTF-8 text.
std::size_t length_of(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    }));
}

}  // namespace

std::string show_duration(double seconds) {
    if (seconds < 99.5) return fmt::format("{:.0f} s", seconds);
    const long minutes = std::lround(to_minutes(seconds));
    if (minutes < 60) return fmt::format("{} min", minutes);
    if (minutes % 60 == 0) return fmt::format("{} h", minutes / 60);
    return fmt::format("{} h {} min", minutes / 60, minutes % 60);
}

std::string show_number(double value, int decimals) {
    constexpr double longest = 1e5;
    if (!(std::abs(value) < longest)) return fmt::format("{:.3g}", value);
    const std::string text = fmt::format("{:.{}f}", value, decimals);
    const bool nothing = text.find_first_of("123456789") == std::string::npos;
    return nothing && text.starts_with('-') ? text.substr(1) : text;
}

std::string wrapped(std::string_view lead, std::string_view text, std::size_t indent) {
    std::string page(lead);
    std::size_t column = length_of(lead);
    bool first = true;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        const std::string_view word = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (word.empty()) continue;
        const std::size_t length = length_of(word);
        if (!first && column + 1 + length > page_width) {
            page += "\n" + std::string(indent, ' ');
            column = indent;
            first = true;
        }
        if (!first) {
            page += ' ';
            ++column;
        }
        page += word;
        column += length;
        first = false;
    }
    return page + "\n";
}

}  // namespace drawwell

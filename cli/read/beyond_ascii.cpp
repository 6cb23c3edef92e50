#include "cli/read/beyond_ascii.h"

#include <algorithm>

namespace drawwell {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool beyond_ascii(char c) {
    return static_cast<unsigned char>(c) >= 0x80;
}

/// Goes through a text in quotes that begins at `at`, to its closing quotes or, in a single line,
/// to that line's end. True: it stopped at a letter that may not stand there.
bool pass_quotes(std::string_view text, std::size_t& at) {
    const char quote = text[at];
    const bool tall = text.substr(at, 3) == (quote == '"' ? "\"\"\"" : "'''");
    const std::string_view closing = text.substr(at, tall ? 3 : 1);
    for (at += closing.size(); at < text.size(); ++at) {
        if (text[at] == '\n' && !tall) return false;
        if (text.substr(at, closing.size()) == closing) {
            at += closing.size() - 1;
            return false;
        }
        if (text[at] != '\\' || quote != '"') continue;
        ++at;
        if (!tall) continue;
        at = std::min(text.find_first_not_of(" \t\r\n", at), text.size());
        if (at < text.size() && beyond_ascii(text[at])) return true;
        // A quote behind a backslash is part of the text; one behind a line's end may close it.
        if (text[at - 1] != '\\') --at;
    }
    return false;
}

Place place_in(std::string_view text, std::size_t at) {
    const std::string_view before = text.substr(0, at);
    const std::size_t line_begin = before.rfind('\n') + 1;  // npos + 1 is 0
    const auto letters =
        std::count_if(before.begin() + static_cast<std::ptrdiff_t>(line_begin), before.end(),
                      [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
    return {static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n')) + 1,
            static_cast<std::size_t>(letters) + 1};
}

}  // namespace

std::optional<Place> beyond_ascii_unquoted(std::string_view text) {
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '#') {
            at = std::min(text.find('\n', at), text.size());
        } else if (text[at] == '"' || text[at] == '\'') {
            if (pass_quotes(text, at)) return place_in(text, at);
        } else if (beyond_ascii(text[at])) {
            return place_in(text, at);
        }
    }
    return {};
}

}  // namespace drawwell

#include "cli/read/visible_text.h"

#include <fmt/format.h>

#include <algorithm>

namespace drawwell {
namespace {

struct Letter {
    char32_t code = 0;
    std::size_t length = 0;  // bytes; 0: no UTF-8 begins here
};

/// The code point at the front of a text, as RFC 3629 has it: shortest form, no surrogates.
Letter front_letter(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned first = byte(0);
    if (first < 0x80) return {first, 1};
    const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || text.size() < length) return {};
    char32_t code = first & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0U) != 0x80) return {};
        code = code << 6U | (byte(i) & 0x3FU);
    }
    constexpr char32_t least[] = {0, 0, 0x80, 0x800, 0x10000};
    if (code < least[length] || code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF)) return {};
    return {code, length};
}

bool is_unseen(char32_t code) {
    const auto within = [code](char32_t from, char32_t to) { return code >= from && code <= to; };
    return code < 0x20 || within(0x7F, 0x9F) ||                 // C0, DEL, C1
           within(0x2028, 0x202E) || within(0x2066, 0x2069) ||  // separators, turns of direction
           (code & 0xFFFEU) == 0xFFFE;  // no characters, nor may XML hold them
}

}  // namespace

std::size_t first_unseen(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const Letter letter = front_letter(text.substr(at));
        if (letter.length == 0 || is_unseen(letter.code)) return at;
        at += letter.length;
    }
    return std::string_view::npos;
}

std::string unseen_in(std::string_view text) {
    const std::size_t at = first_unseen(text);
    if (at == std::string_view::npos) return "";
    const std::size_t length = front_letter(text.substr(at)).length;
    return visible(text.substr(at, std::max<std::size_t>(length, 1)));
}

std::string visible(std::string_view text) {
    std::string shown;
    while (!text.empty()) {
        const std::size_t plain = std::min(first_unseen(text), text.size());
        shown += text.substr(0, plain);
        text.remove_prefix(plain);
        if (text.empty()) break;
        const std::size_t length = std::max<std::size_t>(front_letter(text).length, 1);
        for (const char c : text.substr(0, length))
            shown += fmt::format("\\x{:02x}", static_cast<unsigned>(static_cast<unsigned char>(c)));
        text.remove_prefix(length);
    }
    return shown;
}

std::string visible_lines(std::string_view text) {
    std::string shown;
    for (;;) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        shown += visible(text.substr(0, end));
        if (end == text.size()) return shown;
        shown += '\n';
        text.remove_prefix(end + 1);
    }
}

}  // namespace drawwell

#include "cli/report/json_text.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <string_view>

#include "cli/read/visible_text.h"

namespace drawwell {

std::string json_text(const nlohmann::ordered_json& json) {
    using Json = nlohmann::ordered_json;
    const std::string text = json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
    // They can stand in strings only, where any character may be escaped.
    std::string safe;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t unseen = first_unseen(std::string_view(text).substr(at));
        const std::size_t plain = std::min(unseen, text.size() - at);
        safe.append(text, at, plain);
        at += plain;
        if (at == text.size()) break;
        if (text[at] == '\n') {
            safe += text[at++];
            continue;
        }
        std::size_t end = at + 1;
        while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) ++end;
        const Json letter = text.substr(at, end - at);
        const std::string escaped = letter.dump(-1, ' ', true);
        safe.append(escaped, 1, escaped.size() - 2);  // without its quotes
        at = end;
    }
    return safe;
}

}  // namespace drawwell

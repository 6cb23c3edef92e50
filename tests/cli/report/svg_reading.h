#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace drawwell {

/// Whether every tag of an XML text is closed in its turn and no bare sign is left in its text.
inline bool well_formed(std::string_view xml) {
    std::vector<std::string_view> open;
    bool closed = false;
    while (!xml.empty()) {
        if (xml.front() == '&') {
            const std::string_view name = xml.substr(1, xml.find(';') - 1);
            if (name != "amp" && name != "lt" && name != "gt" && name != "quot") return false;
        }
        if (xml.front() != '<') {
            if (xml.front() != '\n' && open.empty()) return false;
            if (xml.front() == '>') return false;
            xml.remove_prefix(1);
            continue;
        }
        const std::size_t end = xml.find('>');
        if (end == std::string_view::npos || closed) return false;
        const std::string_view tag = xml.substr(1, end - 1);
        xml.remove_prefix(end + 1);
        const std::string_view name = tag.substr(0, tag.find_first_of(" />", 1));
        if (tag.front() == '/') {
            if (open.empty() || tag.substr(1) != open.back()) return false;
            open.pop_back();
            closed = open.empty();
        } else if (tag.back() != '/') {
            open.push_back(name);
        }
    }
    return closed;
}

/// How often a part occurs.
inline std::size_t count_of(std::string_view text, std::string_view part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string_view::npos;
         at = text.find(part, at + 1))
        ++count;
    return count;
}

}  // namespace drawwell

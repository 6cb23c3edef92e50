#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "solver/errors.h"

namespace drawwell::tests {

/// A first stove file: only what has no default.
inline constexpr std::string_view small_stove = R"(title = "small"
[feed]
mouth = "240 mm"
[tunnel]
[port]
[riser]
bore = "125 mm"
top = "725 mm"
[barrel]
diameter = "400 mm"
height = "620 mm"
[plate]
[flue.level]
length = "300 mm"
direction = "level"
[flue.stack]
length = "2.2 m"
[load.main]
at = ["8 min", "16 min"]
)";

inline std::vector<Override> overrides(std::initializer_list<std::string_view> texts) {
    std::vector<Override> list;
    for (const std::string_view text : texts) list.push_back(parse_override(text));
    return list;
}

inline Stove read(std::string_view text, std::initializer_list<std::string_view> sets = {}) {
    return read_stove(text, "s.toml", overrides(sets), read_library());
}

/// The lines of the InputError that reading a text brings; empty if it is read.
inline std::vector<std::string> problems_of(std::string_view text,
                                            std::initializer_list<std::string_view> sets = {}) {
    std::vector<std::string> lines;
    try {
        read(text, sets);
    } catch (const InputError& error) {
        std::string message = error.what();
        for (std::size_t end = message.find('\n'); end != std::string::npos;
             end = message.find('\n')) {
            lines.push_back(message.substr(0, end));
            message.erase(0, end + 1);
        }
        lines.push_back(message);
    }
    return lines;
}

/// The small stove with one line put in place of another.
inline std::string with(std::string_view line, std::string_view instead) {
    std::string text(small_stove);
    const std::size_t at = text.find(line);
    if (at == std::string::npos) throw SolverError("the small stove has no such line");
    return text.replace(at, line.size(), instead);
}

}  // namespace drawwell::tests

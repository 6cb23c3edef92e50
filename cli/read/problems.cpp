#include "cli/read/problems.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/read/several_problems.h"

namespace drawwell {

void Problems::add(const Entry& entry, const std::string& reason) {
    add(entry, entry.place, reason);
}

void Problems::add(const Entry& entry, const Place& place, const std::string& reason) {
    if (entry.from_override)
        problems_.push_back({{}, fmt::format("{}: {}", entry.option, reason)});
    else
        problems_.push_back({place.line > 0 ? place : entry.place,
                             fmt::format("{} = {}: {}", entry.key, entry.value.shown, reason)});
}

void Problems::add(const Place& place, const std::string& text) {
    problems_.push_back({place, text});
}

void Problems::raise(std::string_view file_name) {
    std::stable_sort(problems_.begin(), problems_.end(), [](const Problem& a, const Problem& b) {
        return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
    });
    std::vector<std::string> lines;
    for (const Problem& problem : problems_)
        lines.push_back(problem.place.line > 0
                            ? fmt::format("{}:{}:{}: {}", file_name, problem.place.line,
                                          problem.place.column, problem.text)
                            : problem.text);
    throw SeveralProblems(lines);
}

}  // namespace drawwell

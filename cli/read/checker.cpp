#include "cli/read/checker.h"

#include <fmt/format.h>

#include "cli/read/keys.h"

namespace drawwell {

void Checker::require(bool good, const std::vector<std::string>& keys, const std::string& reason) {
    if (good) return;
    const Entry* blamed = nullptr;
    for (const std::string& key : keys) {
        if (said_.unsure.contains(key)) return;
        const auto said = said_.entries.find(key);
        if (said == said_.entries.end()) continue;
        if (!blamed || (said->second.from_override && !blamed->from_override))
            blamed = &said->second;
    }
    if (blamed)
        problems_.add(*blamed, reason);
    else
        problems_.add(place_of(table_of(keys.front())), by_default(keys.front()) + ": " + reason);
}

void Checker::require_part(bool good, const std::string& table, const std::string& reason) {
    if (!good) problems_.add(place_of(table), fmt::format("[{}]: {}", table, reason));
}

Place Checker::place_of(const std::string& name) const {
    const auto table = said_.tables.find(name);
    return table == said_.tables.end() ? Place{1, 1} : table->second;
}

std::string Checker::by_default(const std::string& name) const {
    StoveDraft draft = draft_;
    const FoundKey found = find_key(name);
    const auto value = found.key ? get_value(draft, found) : std::nullopt;
    return value ? fmt::format("{} = {} (by default)", name, value_text(*found.key, *value)) : name;
}

}  // namespace drawwell

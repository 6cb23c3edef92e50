#include "cli/read/suggest_key.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "cli/read/keys.h"
#include "cli/read/nearest.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

void add_once(std::vector<std::string>& words, std::string word) {
    if (std::find(words.begin(), words.end(), word) == words.end())
        words.push_back(std::move(word));
}

/// The second of three words, or "NAME".
std::string name_in(std::string_view key) {
    const std::size_t first = key.find('.'), last = key.rfind('.');
    if (first == last) return "NAME";
    return std::string(key.substr(first + 1, last - first - 1));
}

}  // namespace

std::string suggest_key(std::string_view key) {
    const std::string name = name_in(key);
    const std::size_t dot = key.rfind('.');
    const std::string table(key.substr(0, dot == std::string_view::npos ? 0 : dot));
    std::vector<std::string> everywhere, here, members;
    for (const Key& each : all_keys()) {
        const std::string full = full_key_name(each, name);
        everywhere.push_back(full);
        if (table.empty() || !full.starts_with(table + ".")) continue;
        const std::string member = full.substr(table.size() + 1);
        if (member.find('.') != std::string::npos) continue;
        here.push_back(full);
        members.push_back(member);
    }
    // The last word alone counts first: most misspellings stand in the right table.
    if (!members.empty()) {
        const std::string member = nearest(key.substr(dot + 1), members);
        if (!member.empty()) return fmt::format("; did you mean \"{}.{}\"?", table, member);
    }
    const std::string best = nearest(key, everywhere);
    const bool close = !best.empty() && edit_distance(key, best) <= 3;
    if (close || members.empty()) return did_you_mean(key, everywhere);
    return fmt::format("; [{}] takes {}", table, fmt::join(members, ", "));
}

std::string suggest_table(std::string_view table) {
    std::vector<std::string> tables;
    for (const Key& each : all_keys()) {
        const std::string full = full_key_name(each, name_in(table));
        const std::size_t dot = full.find('.');
        if (dot != std::string::npos) add_once(tables, full.substr(0, dot));
    }
    const std::string first(table.substr(0, table.find('.')));
    if (is_table_of_keys(first))
        return fmt::format("; {}",
                           is_table_of_keys(first + ".NAME")
                               ? fmt::format("write [{}.NAME] with a name of your own", first)
                               : fmt::format("[{}] has no tables inside", first));
    const std::string best = nearest(first, tables);
    if (best.empty()) return fmt::format("; there are {}", fmt::join(tables, ", "));
    return fmt::format("; did you mean \"[{}{}]\"?", best, table.substr(first.size()));
}

std::string table_help(std::string_view table) {
    const bool named = is_table_of_keys(std::string(table) + ".NAME");
    return fmt::format("this is a table, not a value: write [{}{}] and its keys below", table,
                       named ? ".NAME" : "");
}

const Key& known_key(std::string_view key, std::string_view typed) {
    const FoundKey found = find_key(key);
    if (!found.key) throw InputError(fmt::format("{}: unknown key{}", typed, suggest_key(key)));
    return *found.key;
}

}  // namespace drawwell

#include "cli/read/keys.h"

#include <algorithm>

#include "cli/read/keys/fields.h"

namespace drawwell {
namespace {

constexpr std::string_view placeholder = "NAME";

std::vector<std::string_view> split(std::string_view name) {
    std::vector<std::string_view> parts;
    for (std::size_t dot = name.find('.'); dot != std::string_view::npos; dot = name.find('.')) {
        parts.push_back(name.substr(0, dot));
        name.remove_prefix(dot + 1);
    }
    parts.push_back(name);
    return parts;
}

/// Whether the first words of a pattern are those of `words`.
bool begins_as(const std::vector<std::string_view>& pattern,
               const std::vector<std::string_view>& words) {
    return words.size() <= pattern.size() &&
           std::equal(words.begin(), words.end(), pattern.begin(), [](auto word, auto expected) {
               return word == expected || expected == placeholder;
           });
}

std::vector<Key> make_keys() {
    std::vector<Key> keys{{.name = "title",
                           .kind = Kind::text,
                           .fallback = "none",
                           .help = "what you call the stove",
                           .field = fields::own<&Stove::title>}};
    for (auto part : {firebox_keys, riser_keys, pot_keys, griddle_keys, oven_tube_keys, window_keys,
                      grid_keys, air_channel_keys, bell_keys, damp_keys, flue_keys, wood_keys,
                      schedule_keys, site_keys, burn_keys, sheet_keys}) {
        const std::vector<Key> more = part();
        keys.insert(keys.end(), more.begin(), more.end());
    }
    return keys;
}

std::vector<std::string> names_in(StoveDraft& draft, std::string_view group) {
    std::vector<std::string> names;
    const auto collect = [&](const auto& parts) {
        for (const auto& part : parts) names.push_back(part.name);
    };
    if (group == "flue") collect(draft.stove.flue.sections);
    if (group == "side_air") collect(draft.stove.side_air);
    if (group == "leak") collect(draft.stove.leaks);
    if (group == "load") collect(draft.stove.loads);
    for (const Fitting& fitting : draft.stove.fittings)
        std::visit(
            [&](const auto& part) {
                if (part.table == group) names.push_back(part.name);
            },
            fitting);
    return names;
}

}  // namespace

std::span<const Key> all_keys() {
    static const std::vector<Key> keys = make_keys();
    return keys;
}

FoundKey find_key(std::string_view full_name) {
    const auto words = split(full_name);
    for (const Key& key : all_keys()) {
        const auto pattern = split(key.name);
        if (pattern.size() != words.size() || !begins_as(pattern, words)) continue;
        const bool named = pattern.size() == 3 && pattern[1] == placeholder;
        return {&key, named ? std::string(words[1]) : std::string()};
    }
    return {};
}

std::string full_key_name(const Key& key, std::string_view name) {
    std::string full(key.name);
    const std::size_t at = full.find(placeholder);
    if (at != std::string::npos) full.replace(at, placeholder.size(), name);
    return full;
}

std::string table_of(std::string_view full_name) {
    const std::size_t dot = full_name.rfind('.');
    return std::string(full_name.substr(0, dot == std::string_view::npos ? 0 : dot));
}

std::string_view last_word(std::string_view full_name) {
    return full_name.substr(full_name.rfind('.') +
                            1);  // without a dot, from the start: npos + 1 is 0
}

bool is_table_of_keys(std::string_view table) {
    const auto words = split(table);
    return std::any_of(all_keys().begin(), all_keys().end(), [&](const Key& key) {
        const auto pattern = split(key.name);
        return pattern.size() > words.size() && begins_as(pattern, words);
    });
}

std::vector<FoundKey> keys_in(StoveDraft& draft) {
    std::vector<FoundKey> found;
    const std::span<const Key> keys = all_keys();
    for (std::size_t i = 0; i < keys.size();) {
        const auto pattern = split(keys[i].name);
        if (pattern.size() < 3) {
            if (keys[i].field(draft, {}, false).index() != 0) found.push_back({&keys[i], {}});
            ++i;
            continue;
        }
        // A named part's keys stand together in the registry: part after part, not key after key.
        const std::string prefix = std::string(pattern[0]) + "." + std::string(placeholder) + ".";
        std::size_t end = i;
        while (end < keys.size() && keys[end].name.starts_with(prefix)) ++end;
        for (const std::string& name : names_in(draft, pattern[0]))
            for (std::size_t k = i; k < end; ++k) found.push_back({&keys[k], name});
        i = end;
    }
    return found;
}

std::optional<Value> get_value(const Stove& stove, std::string_view full_name) {
    const FoundKey found = find_key(full_name);
    if (!found.key) return {};
    StoveDraft draft = draft_of(stove);
    return get_value(draft, found);
}

}  // namespace drawwell

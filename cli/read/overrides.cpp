#include "cli/read/overrides.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "cli/read/keys.h"
#include "cli/read/nearest.h"
#include "cli/read/number_text.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

bool is_list(const FoundKey& found) {
    return found.key && (found.key->kind == Kind::times || found.key->kind == Kind::names ||
                         found.key->kind == Kind::build_up);
}

/// Whether a list is one of times by the clock: 19:30,20:00.
bool is_of_day(std::string_view list) {
    return list.find_first_not_of("0123456789:, ") == std::string_view::npos;
}

bool is_fire(const std::string& name) {
    return name == "load" || name == "schedule.load" || name == "kindling" ||
           name.starts_with("load.") || name.starts_with("kindling.") || name == "heat.power" ||
           name == "burn_rate.table";
}

bool is_either(const std::string& key, const std::string& table, std::string_view first,
               std::string_view second) {
    return table_of(key) == table && (last_word(key) == first || last_word(key) == second);
}

/// Whether an override of one key takes the place of what the file says of another.
bool replaces(const std::string& key, const std::string& old) {
    const std::string table = table_of(key);
    if (key == old) return true;
    if (table == "wood") return old.starts_with("load.") && last_word(old) == last_word(key);
    if (key == "heat.power" || key == "burn_rate.table") return is_fire(old);
    if (table.starts_with("flue.") && is_either(key, table, "direction", "rise"))
        return is_either(old, table, "direction", "rise");
    if (key == "schedule.load") return old.starts_with("load.") && last_word(old) == "at";
    if (is_either(key, "site", "altitude", "pressure"))
        return is_either(old, "site", "altitude", "pressure");
    return false;
}

/// Drops from schedule.load the rows of a load whose times an override says.
void drop_scheduled(RawFile& file, const std::string& load) {
    for (Entry& entry : file.entries) {
        if (entry.key != "schedule.load" || entry.from_override) continue;
        std::erase_if(entry.value.items, [&](const RawValue& row) {
            return row.items.size() == 2 && row.items[1].text == load;
        });
    }
    std::erase_if(file.entries, [](const Entry& entry) {
        return entry.key == "schedule.load" && !entry.from_override && entry.value.items.empty() &&
               entry.value.form == RawValue::Form::list;
    });
}

/// Refuses a part that the file does not have, if it has others of that sort: most likely a
/// misspelling.
void require_known_name(const RawFile& file, const std::string& key, const std::string& name) {
    const std::string group = key.substr(0, key.find('.'));
    std::vector<std::string> names;
    for (const TableHead& table : file.tables)
        if (table_of(table.name) == group) names.emplace_back(last_word(table.name));
    if (names.empty() || std::find(names.begin(), names.end(), name) != names.end()) return;
    throw InputError(fmt::format("the stove has no [{}.{}], only {}{}", group, name,
                                 fmt::join(names, ", "), did_you_mean(name, names)));
}

}  // namespace

Override parse_override(std::string_view text) {
    const std::size_t equals = text.find('=');
    if (equals == 0 || equals == std::string_view::npos)
        throw InputError(
            fmt::format("--set {}: write KEY=VALUE, for example riser.top=600mm", text));
    std::string key(text.substr(0, equals));
    std::erase(key, ' ');
    return {std::move(key), std::string(text.substr(equals + 1))};
}

void apply_overrides(RawFile& file, std::span<const Override> overrides, Problems& problems) {
    for (const Override& each : overrides) {
        Entry entry{each.key, {}, {}, true, each.typed};
        if (each.typed.empty()) entry.option = fmt::format("--set {}={}", each.key, each.value);
        entry.value.shown = each.value;
        const FoundKey found = find_key(each.key);
        try {
            if (!found.name.empty()) require_known_name(file, each.key, found.name);
            if (is_list(found) && found.key->kind != Kind::names && !is_of_day(each.value) &&
                has_comma_in_number(each.value) && each.value.find('[') == std::string::npos)
                throw InputError(
                    "a comma between digits is read in two ways: write a decimal point, and a unit "
                    "with each value");
            entry.value = parse_raw_override(each.value, is_list(found));
        } catch (const InputError& error) {
            problems.add(entry, error.what());
            continue;
        }
        std::erase_if(file.entries, [&](const Entry& old) {
            return each.key == old.key || (!old.from_override && replaces(each.key, old.key));
        });
        std::erase_if(file.tables, [&](const TableHead& table) {
            return is_fire(table.name) && replaces(each.key, table.name);
        });
        if (found.key && found.key->name == "load.NAME.at") drop_scheduled(file, found.name);
        file.entries.push_back(std::move(entry));
    }
}

}  // namespace drawwell

#include "cli/read/read_stove.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/read/clock_time.h"
#include "cli/read/keys.h"
#include "cli/read/overrides.h"
#include "cli/read/raw_value.h"
#include "cli/read/read_value.h"
#include "cli/read/stove_checks.h"
#include "cli/read/suggest_key.h"

namespace drawwell {
namespace {

/// One reading of one stove file: entries into values, values into a draft.
class StoveReader {
  public:
    StoveReader(std::string_view file_name, const Library& library, const FileReader& read_file)
        : file_name_(file_name), library_(library), read_file_(read_file) {
        draft_.library = &library;
    }

    const StoveDraft& read(std::string_view text, std::span<const Override> overrides, bool check) {
        RawFile file = parse_raw(text, file_name_);
        apply_overrides(file, overrides, problems_);
        for (const TableHead& table : file.tables) open_table(table);
        // Clock times everywhere count from lighting.
        std::stable_partition(file.entries.begin(), file.entries.end(),
                              [](const Entry& entry) { return entry.key == lit_at; });
        for (const Entry& entry : file.entries) take(entry);
        take_weather(draft_, said_, read_file_, problems_);
        add_kindling();
        check_contradictions(said_, problems_);
        sort_flue();
        require_keys();
        check_load_times(draft_, said_, problems_);
        fill_defaults();
        complete(draft_);
        if (check) check_stove(draft_, said_, problems_);
        if (!problems_.empty()) problems_.raise(file_name_);
        return draft_;
    }

  private:
    static inline const std::string lit_at = "burn.lit_at";

    /// Notes where a table begins and makes its part, so that its required keys are asked for.
    void open_table(const TableHead& table) {
        if (is_refused(table.name)) return;
        const std::string reason = why_no_table(table.name);
        if (!reason.empty()) {
            problems_.add(table.place, fmt::format("[{}]: {}", table.name, reason));
            refused_.push_back(table.name + ".");
            return;
        }
        said_.tables[table.name] = table.place;
        for (const Key& key : all_keys())
            if (table_of(full_key_name(key, last_word(table.name))) == table.name)
                key.field(draft_, last_word(table.name), true);
    }

    static std::string why_no_table(const std::string& name) {
        if (find_key(name).key) return "it takes a value, it is not a table";
        if (!is_table_of_keys(name)) return "unknown table" + suggest_table(name);
        return is_plain(last_word(name)) ? "" : plain_names;
    }

    static constexpr const char* plain_names = "a name is made of letters, digits, - and _";
    static bool is_plain(std::string_view name) {
        return !name.empty() && std::all_of(name.begin(), name.end(), [](char c) {
            return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                   c == '-' || c == '_';
        });
    }

    bool is_refused(const std::string& name) const {
        return std::any_of(refused_.begin(), refused_.end(),
                           [&](const std::string& table) { return name.starts_with(table); });
    }

    void take(const Entry& entry) {
        if (is_refused(entry.key)) return;
        said_.entries[entry.key] = entry;
        const FoundKey found = find_key(entry.key);
        if (!found.key) {
            problems_.add(entry, is_table_of_keys(entry.key)
                                     ? table_help(entry.key)
                                     : "unknown key" + suggest_key(entry.key));
            return;
        }
        if (!found.name.empty() && !is_plain(found.name)) {
            problems_.add(entry, plain_names);
            return;
        }
        found.key->field(draft_, found.name, true);
        if (said_.unsure.contains(lit_at) && has_clock_time(entry.value)) {
            said_.unsure.insert(entry.key);
            return;
        }
        const std::optional<Value> value =
            read_value(*found.key, entry, library_, problems_, draft_.stove.burn.lit_at);
        if (value)
            set_value(draft_, found, *value);
        else
            said_.unsure.insert(entry.key);
    }

    static bool has_clock_time(const RawValue& raw) {
        return is_clock_text(raw.text) ||
               std::any_of(raw.items.begin(), raw.items.end(), has_clock_time);
    }

    /// Loads are lit by kindling, said or not.
    void add_kindling() {
        if (!draft_.stove.loads.empty() && !draft_.stove.kindling)
            draft_.stove.kindling.emplace().by_default = true;
    }

    /// Puts the flue's sections into the order said, otherwise that of their first lines.
    void sort_flue() {
        auto& sections = draft_.stove.flue.sections;
        const auto entry = said_.entries.find("flue.order");
        if (entry == said_.entries.end() || said_.unsure.contains("flue.order")) return;
        std::vector<FlueSection> sorted;
        for (const std::string& name : draft_.flue_order) {
            const auto found =
                std::find_if(sections.begin(), sections.end(),
                             [&](const FlueSection& each) { return each.name == name; });
            if (found == sections.end()) {
                problems_.add(entry->second, fmt::format("there is no section [flue.{}]", name));
                continue;
            }
            sorted.push_back(*found);
            sections.erase(found);
        }
        for (const FlueSection& left : sections) {
            problems_.add(entry->second, fmt::format("the section \"{}\" is left out", left.name));
            sorted.push_back(left);
        }
        sections = std::move(sorted);
    }

    void require_keys() {
        for (const FoundKey& found : keys_in(draft_)) {
            const std::string full = full_key_name(*found.key, found.name);
            if (found.key->required) require_said(full, std::string(found.key->help));
        }
        const bool slot =
            said_.entries.contains("riser.width") || said_.entries.contains("riser.depth");
        if (!slot) require_said("riser.bore", "say it, or riser.width and riser.depth of a slot");
        for (const char* side : {"riser.width", "riser.depth"})
            if (slot) require_said(side, "a slot or square riser has both");
    }

    void require_said(const std::string& full, const std::string& reason) {
        if (said_.entries.contains(full)) return;
        said_.unsure.insert(full);
        const auto table = said_.tables.find(table_of(full));
        problems_.add(table == said_.tables.end() ? Place{1, 1} : table->second,
                      fmt::format("{} is missing: {}", full, reason));
    }

    /// Gives every key that was not said its default, in the registry's order. Defaults that follow
    /// from other values are not relied on while some value is wrong.
    void fill_defaults() {
        const bool some_unsure = !said_.unsure.empty();
        for (const FoundKey& found : keys_in(draft_)) {
            const std::string full = full_key_name(*found.key, found.name);
            if (said_.entries.contains(full)) continue;
            if (found.key->derive) {
                if (some_unsure) said_.unsure.insert(full);
                if (const auto value = found.key->derive(draft_, found.name))
                    set_value(draft_, found, *value);
            } else if (const auto value = default_value(*found.key)) {
                set_value(draft_, found, *value);
            }
        }
    }

    std::optional<Value> default_value(const Key& key) {
        if (key.required || key.fallback.starts_with("none")) return {};
        Entry entry{std::string(key.name),
                    parse_raw_override(key.fallback, key.kind == Kind::build_up),
                    {1, 1},
                    false};
        return read_value(key, entry, library_, problems_);
    }

    std::string_view file_name_;
    const Library& library_;
    const FileReader& read_file_;
    StoveDraft draft_;
    Said said_;
    Problems problems_;
    std::vector<std::string> refused_;  // tables already refused, with their dot
};

}  // namespace

Stove read_stove(std::string_view text, std::string_view file_name,
                 std::span<const Override> overrides, const Library& library,
                 const FileReader& read_file) {
    return StoveReader(file_name, library, read_file).read(text, overrides, true).stove;
}

Stove read_unchecked(std::string_view text, std::string_view file_name,
                     std::span<const Override> overrides, const Library& library,
                     const FileReader& read_file) {
    return StoveReader(file_name, library, read_file).read(text, overrides, false).stove;
}

SheetNote read_sheet_note(std::string_view text, std::string_view file_name,
                          std::span<const Override> overrides, const Library& library,
                          const FileReader& read_file) {
    StoveReader reader(file_name, library, read_file);
    return reader.read(text, overrides, false).sheet.value_or(SheetNote{});
}

}  // namespace drawwell

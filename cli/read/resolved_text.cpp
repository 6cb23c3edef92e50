#include "cli/read/resolved_text.h"

#include <fmt/format.h>

#include "cli/read/keys.h"

namespace drawwell {
namespace {

/// Whether a key is left unsaid: another says the same, its zero means that it is absent, or it
/// places what is absent.
bool is_unsaid(const std::string& full, const Value& value, const StoveDraft& draft) {
    const std::string table = table_of(full);
    const auto ends = [&](std::string_view member) { return full == table + std::string(member); };
    if (full == "site.altitude" || full == "flue.order") return true;
    if (table.starts_with("flue.") && ends(".rise"))
        return draft.direction.contains(table.substr(table.find('.') + 1));
    if (full.starts_with("barrel.jacket_")) return draft.stove.barrel->jacket.empty();
    const double* number = std::get_if<double>(&value);
    const bool may_be_absent = full == "riser.bore" || full == "riser.width" ||
                               full == "riser.depth" || full == "flue.outlet" ||
                               full == "wood.side" || full == "wood.length" ||
                               (table.starts_with("side_air.") && !ends(".at"));
    return may_be_absent && number && *number == 0;
}

}  // namespace

std::string resolved_text(const Stove& stove) {
    StoveDraft draft = draft_of(stove);
    std::string text, open_table;
    for (const FoundKey& found : keys_in(draft)) {
        const auto value = get_value(draft, found);
        const std::string full = full_key_name(*found.key, found.name);
        if (!value || is_unsaid(full, *value, draft)) continue;
        const std::string table = table_of(full);
        if (table != open_table) text += fmt::format("\n[{}]\n", table);
        open_table = table;
        text += fmt::format("{} = {}\n", last_word(full), value_text(*found.key, *value));
    }
    // Loads would otherwise be given kindling by default.
    if (!stove.loads.empty() && !stove.kindling) text += "\n[kindling]\nmass = \"0 kg\"\n";
    return text;
}

}  // namespace drawwell

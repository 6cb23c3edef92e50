#include "cli/read/over_time.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "cli/read/keys.h"
#include "cli/read/nearest.h"
#include "cli/read/weather_file.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

template <class Part>
std::vector<std::string> names_of(const std::vector<Part>& parts) {
    std::vector<std::string> names;
    names.reserve(parts.size());
    for (const Part& part : parts) names.push_back(part.name);
    return names;
}

bool contains(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

}  // namespace

void take_weather(StoveDraft& draft, Said& said, const FileReader& read_file, Problems& problems) {
    if (!said.is_sure("site.weather")) return;
    const Entry file = said.entries.at("site.weather");
    Weather weather;
    try {
        if (!read_file)
            throw InputError("no other file can be read from here: write its values as tables");
        weather = read_weather(read_file(draft.weather), draft.weather);
    } catch (const InputError& error) {
        weather.problems.emplace_back(error.what());
    }
    for (const std::string& problem : weather.problems) problems.add(file, problem);
    for (const auto& [key, table] : weather.tables) {
        const auto other = said.entries.find(key);
        if (other != said.entries.end()) {
            if (other->second.from_override == file.from_override) {
                problems.add(other->second, "site.weather says it too: leave one of them out");
                continue;
            }
            if (other->second.from_override) continue;
        }
        set_value(draft, find_key(key), table);
        said.entries[key] = file;
    }
}

void check_load_times(const StoveDraft& draft, const Said& said, Problems& problems) {
    const std::string schedule = "schedule.load";
    const std::vector<std::string> names = names_of(draft.stove.loads);
    std::vector<std::string> scheduled;
    for (std::size_t i = 0; i < draft.load_times.size(); ++i) {
        const std::string& name = draft.load_times[i].load;
        const bool first = !contains(scheduled, name);
        scheduled.push_back(name);
        if (!first || contains(names, name)) continue;
        const Entry& entry = said.entries.at(schedule);
        problems.add(entry, entry.value.items.at(i).place,
                     fmt::format("there is no [load.{}]{}", name, did_you_mean(name, names)));
    }
    for (const std::string& name : names) {
        const std::string at = fmt::format("load.{}.at", name);
        const auto entry = said.entries.find(at);
        if (entry != said.entries.end()) {
            if (contains(scheduled, name))
                problems.add(entry->second, schedule + " says it too: leave one of them out");
        } else if (!contains(scheduled, name) && !said.unsure.contains(schedule)) {
            const auto table = said.tables.find(table_of(at));
            problems.add(table == said.tables.end() ? Place{1, 1} : table->second,
                         fmt::format("{} is missing: say when the load goes in, or name it in {}",
                                     at, schedule));
        }
    }
}

void check_moved(const StoveDraft& draft, const Said& said, Checker& check) {
    const std::pair<std::string, std::string_view> needs[] = {
        {"schedule.damper", "a damper needs a flue to sit in: add [flue.NAME]"},
        {"schedule.bypass", "there is no bypass to open: add [bypass]"},
        {"schedule.port", "there is no port to narrow: add [port] or [tunnel]"},
        {"schedule.side_air", "there is no side air to close: add [side_air.NAME]"},
        {"schedule.feed_cover", "there is no feed to cover: add [feed]"},
        {"schedule.plate_cover", "there is no plate to cover: add [plate]"},
    };
    StoveDraft moved = draft;
    for (const auto& [key, reason] : needs)
        if (said.entries.contains(key))
            check.require(find_key(key).key->field(moved, {}, false).index() != 0, {key},
                          std::string(reason));
    const std::vector<std::string> sections = names_of(draft.stove.flue.sections);
    const auto names_section = [&](const std::string& name, const std::string& key) {
        check.require(
            name.empty() || contains(sections, name), {key},
            fmt::format("there is no section [flue.{}]{}", name, did_you_mean(name, sections)));
    };
    names_section(draft.stove.flue.damper, "flue.damper");
    if (draft.stove.bypass) names_section(draft.stove.bypass->into, "bypass.into");
}

}  // namespace drawwell

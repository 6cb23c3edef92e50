#include "cli/study/headline.h"

#include <algorithm>
#include <array>

#include "cli/report/page_text.h"

namespace drawwell {
namespace {

using enum Better;

constexpr std::array all{
    Headline{"draws", "draws", "", more, 0},
    Headline{"reserve_draw_min_pa", "spare draw", "Pa", more, 1},
    Headline{"smoke_back_s", "smoke back", "s", less, 0},
    Headline{"plate_centre_max_c", "plate", "°C", more, 0},
    Headline{"plate_minutes_fry", "fries", "min", more, 0},
    Headline{"exit_gas_mean_c", "exit gas", "°C", less, 0},
    Headline{"heat_to_room_mj", "to room", "MJ", more, 1},
};

/// How the name of an answer ends by its unit.
struct Ending {
    std::string_view ending, unit;
    int decimals = 1;
};

constexpr std::array endings{
    Ending{"_pa", "Pa", 1}, Ending{"_c", "°C", 0},  Ending{"_s", "s", 0},
    Ending{"_mj", "MJ", 1}, Ending{"_kg", "kg", 2}, Ending{"_m", "m", 4},
};

}  // namespace

std::span<const Headline> headlines() {
    return all;
}

Headline headline_of(std::string_view answer) {
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const Headline& each) { return each.answer == answer; });
    if (found != all.end()) return *found;
    for (const Ending& each : endings)
        if (answer.ends_with(each.ending) && !answer.ends_with("_kg_s"))
            return {answer, answer.substr(0, answer.size() - each.ending.size()), each.unit,
                    neither, each.decimals};
    return {answer, answer, "", neither, 1};
}

Headline in_system(Headline headline, UnitSystem system) {
    if (system == UnitSystem::metric) return headline;
    const auto as = [&](std::string_view unit, double scale, double offset, int decimals) {
        headline.unit = unit;
        headline.scale = scale;
        headline.offset = offset;
        headline.decimals = decimals;
    };
    if (headline.unit == "°C") as("°F", 1.8, 32, 0);
    if (headline.unit == "m") as("in", number_in(1, "in", Quantity::length), 0, 2);
    if (headline.unit == "kg") as("lb", number_in(1, "lb", Quantity::mass), 0, 2);
    return headline;
}

std::string shown(const Answers& answers, const Headline& headline) {
    const Answer* answer = answers.find(headline.answer);
    if (!answer || std::holds_alternative<std::monostate>(*answer))
        return headline.answer == "draws" ? "too short" : "-";
    if (const bool* holds = std::get_if<bool>(answer)) return *holds ? "yes" : "no";
    if (const std::string* word = std::get_if<std::string>(answer)) return *word;
    return show_number(headline.scale * std::get<double>(*answer) + headline.offset,
                       headline.decimals);
}

}  // namespace drawwell

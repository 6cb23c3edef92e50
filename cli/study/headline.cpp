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

}  // namespace

std::span<const Headline> headlines() {
    return all;
}

Headline headline_of(std::string_view answer) {
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const Headline& each) { return each.answer == answer; });
    return found != all.end() ? *found : Headline{answer, answer, "", neither, 1};
}

std::string shown(const Answers& answers, const Headline& headline) {
    const Answer* answer = answers.find(headline.answer);
    if (!answer || std::holds_alternative<std::monostate>(*answer)) return "-";
    if (const bool* holds = std::get_if<bool>(answer)) return *holds ? "yes" : "no";
    if (const std::string* word = std::get_if<std::string>(answer)) return *word;
    return show_number(std::get<double>(*answer), headline.decimals);
}

}  // namespace drawwell

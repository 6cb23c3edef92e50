#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "cli/report/shown_unit.h"
#include "cli/study/answers.h"

namespace drawwell {

/// Which way an answer is better.
enum class Better { more, less, neither };

/// An answer that a comparison shows, by its name, in the trade's words.
struct Headline {
    std::string_view answer;
    std::string_view heading, unit;  // for a narrow column: `spare draw`, `Pa`
    Better better = Better::neither;
    int decimals = 0;
    double scale = 1, offset = 0;  // an answer is shown as scale * answer + offset
};

/// What matters of a burn, draw first.
std::span<const Headline> headlines();

/// The headline of that answer; any other answer's is its name and the unit at the name's end.
Headline headline_of(std::string_view answer);

/// The same in the units asked for: `plate`, `°C` as `plate`, `°F`.
Headline in_system(Headline headline, UnitSystem system);

/// As a table shows it: `yes`, `6.6`, `-` where it never happened; `too short` where a burn could
/// not be judged.
std::string shown(const Answers& answers, const Headline& headline);

}  // namespace drawwell

#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace drawwell {

/// Whether a text is written as a time of day: "20:10", right or not.
bool is_clock_text(std::string_view text);

/// "20:10" in seconds after midnight. InputError: not a time of day.
double parse_clock(std::string_view text);

/// Whole minutes of a time of day [s after midnight] as "20:10".
std::string clock_text(double time_of_day);

/// The first time [s] at or after lighting when the clock shows `clock`; both in s after midnight.
double after_lighting(double clock, double lit_at);

}  // namespace drawwell

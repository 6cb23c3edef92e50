#include "cli/read/clock_time.h"

#include <fmt/format.h>

#include <algorithm>

#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr int hour = 3600, minute = 60;  // [s]
constexpr double day = 24 * hour;        // [s]

bool is_number(std::string_view text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// Of at most two digits.
int number(std::string_view digits) {
    int value = 0;
    for (const char digit : digits) value = 10 * value + (digit - '0');
    return value;
}

}  // namespace

bool is_clock_text(std::string_view text) {
    const std::size_t colon = text.find(':');
    return colon != std::string_view::npos && is_number(text.substr(0, colon)) &&
           is_number(text.substr(colon + 1));
}

double parse_clock(std::string_view text) {
    const std::size_t colon = text.find(':');
    if (!is_clock_text(text) || colon > 2 || text.size() != colon + 3 ||
        number(text.substr(0, colon)) > 23 || number(text.substr(colon + 1)) > 59)
        throw InputError("a time of day is written from \"00:00\" to \"23:59\"");
    return hour * number(text.substr(0, colon)) + minute * number(text.substr(colon + 1));
}

std::string clock_text(double time_of_day) {
    const int whole = static_cast<int>(time_of_day);
    return fmt::format("{:02}:{:02}", whole / hour, whole % hour / minute);
}

double after_lighting(double clock, double lit_at) {
    return clock >= lit_at ? clock - lit_at : clock - lit_at + day;
}

}  // namespace drawwell

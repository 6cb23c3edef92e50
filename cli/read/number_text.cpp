#include "cli/read/number_text.h"

#include <charconv>
#include <cmath>
#include <cstddef>
#include <system_error>

#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double largest_number = 1e15;  // beyond it nobody means what they wrote

constexpr std::string_view typeset_minus = "\u2212";

/// Takes one plain number off the front of the text; false if there is none.
bool take_plain(std::string_view& text, double& number) {
    if (text.starts_with(typeset_minus)) {
        std::string_view rest = text.substr(typeset_minus.size());
        const bool digits = !rest.empty() && rest.front() != '-' && rest.front() != '+';
        if (!digits || !take_plain(rest, number)) return false;
        number = -number;
        text = rest;
        return true;
    }
    const char* begin = text.data() + (!text.empty() && text.front() == '+' ? 1 : 0);
    const auto [end, error] = std::from_chars(begin, text.data() + text.size(), number);
    if (error == std::errc::invalid_argument) return false;
    if (error == std::errc::result_out_of_range) throw InputError("the number is out of range");
    if (!std::isfinite(number)) throw InputError("the number must be finite");
    if (std::abs(number) > largest_number) throw InputError("the number is out of range");
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return true;
}

}  // namespace

void skip_blanks(std::string_view& text) {
    constexpr std::string_view blanks[] = {" ", "\t", "\u00a0", "\u2009", "\u202f"};
    for (bool more = true; more;) {
        more = false;
        for (const std::string_view blank : blanks)
            if (text.starts_with(blank)) {
                text.remove_prefix(blank.size());
                more = true;
            }
    }
}

std::string with_plain_minus(std::string_view text) {
    std::string plain;
    for (std::size_t at = text.find(typeset_minus); at != std::string_view::npos;
         at = text.find(typeset_minus)) {
        plain += text.substr(0, at);
        plain += '-';
        text.remove_prefix(at + typeset_minus.size());
    }
    return plain += text;
}

bool has_comma_in_number(std::string_view text) {
    const auto digit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9'; };
    for (std::size_t i = 1; i + 1 < text.size(); ++i)
        if (text[i] == ',' && digit(i - 1) && digit(i + 1)) return true;
    return false;
}

bool starts_number(char c) {
    return (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+';
}

double take_number(std::string_view& text) {
    double number = 0;
    if (!take_plain(text, number)) throw InputError("a number is missing");
    if (text.starts_with(','))
        throw InputError(
            "a comma in a number is read in two ways: write a decimal point, or nothing");
    std::string_view ahead = text;
    double over = number, under = 0;
    const bool whole_first = !ahead.starts_with('/');
    if (whole_first) {
        skip_blanks(ahead);
        if (ahead.empty() || ahead.front() < '0' || ahead.front() > '9' ||
            !take_plain(ahead, over) || !ahead.starts_with('/'))
            return number;
    }
    ahead.remove_prefix(1);
    if (!take_plain(ahead, under) || under < 1) throw InputError("the fraction is not a number");
    text = ahead;
    const double fraction = over / under;
    if (!whole_first) return fraction;
    return number < 0 ? number - fraction : number + fraction;
}

}  // namespace drawwell

#pragma once

#include <string>
#include <string_view>

namespace drawwell {

/// Drops blanks from the front of a text, those of typeset pages too, which break no line.
void skip_blanks(std::string_view& text);

/// The text with every minus sign of typeset pages (U+2212) as the plain one.
std::string with_plain_minus(std::string_view text);

/// Whether a comma stands between two digits, where it may part a number or two.
bool has_comma_in_number(std::string_view text);

/// Whether a number may start with this character.
bool starts_number(char c);

/// Takes "12.5", "1/2" or "7 1/8" off the front of a text; its minus may be U+2212. InputError with
/// the reason: no number there, not finite, absurdly large, a comma in it.
double take_number(std::string_view& text);

}  // namespace drawwell

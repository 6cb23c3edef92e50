#pragma once

#include <string_view>

namespace drawwell {

/// Drops blanks from the front of a text.
void skip_blanks(std::string_view& text);

/// Whether a number may start with this character.
bool starts_number(char c);

/// Takes "12.5", "1/2" or "7 1/8" off the front of a text. InputError with the reason: no number
/// there, not finite, absurdly large, a comma in it.
double take_number(std::string_view& text);

}  // namespace drawwell

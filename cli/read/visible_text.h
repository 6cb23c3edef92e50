#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace drawwell {

/// Where in a text the first byte stands that a terminal would obey, or an eye could not see, in
/// place of showing it: a control character (line breaks among them), one that turns the direction
/// of reading, a byte that is no UTF-8. npos: there is none.
std::size_t first_unseen(std::string_view text);

/// The first of those letters as \xNN, byte by byte; empty: there is none.
std::string unseen_in(std::string_view text);

/// The text with all of those shown as \xNN, byte by byte: what may be printed of any name or value
/// that somebody gave.
std::string visible(std::string_view text);

/// The same of a text of several lines.
std::string visible_lines(std::string_view text);

}  // namespace drawwell

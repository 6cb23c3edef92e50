#pragma once

#include <string>
#include <string_view>

namespace drawwell {

inline constexpr std::size_t page_width = 80;
inline constexpr double thin_reserve = 2;  // [Pa] a light gust, less is little to spare; our choice

/// "2 h 20 min", "16 min", "45 s" of a time in seconds.
std::string show_duration(double seconds);

/// "6.4" with the decimals asked for, "1.2e+09" of what is too long for that; never "-0.0".
std::string show_number(double value, int decimals);

/// Text broken into lines within the page, every line but the first indented by `indent` spaces;
/// the first begins with `lead`.
std::string wrapped(std::string_view lead, std::string_view text, std::size_t indent);

}  // namespace drawwell

#pragma once

#include <initializer_list>
#include <string>

namespace drawwell {

/// "177.5 mm" of a length in metres, to a tenth.
std::string mm_text(double length);
/// "177.5 mm (7 in)".
std::string both_text(double length);
/// "110 x 340 x 32 mm" of lengths in metres, and the same in inches.
std::string sizes_mm(std::initializer_list<double> lengths);
std::string sizes_inch(std::initializer_list<double> lengths);
/// "aes board" of `aes_board`.
std::string spoken(std::string name);
/// "12.3", "4560", "0.071": three digits that count, of a value of any size.
std::string three_digits(double value);

}  // namespace drawwell

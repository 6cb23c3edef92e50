#include "cli/read/difference.h"

#include <fmt/format.h>

#include "cli/read/number_text.h"

namespace drawwell {

double parse_difference(std::string_view text, Quantity quantity) {
    std::string_view unit = text;
    skip_blanks(unit);
    take_number(unit);
    skip_blanks(unit);
    return parse_quantity(text, quantity) - parse_quantity(fmt::format("0 {}", unit), quantity);
}

}  // namespace drawwell

#include "cli/report/csv_cell.h"

#include <charconv>
#include <cmath>
#include <system_error>

namespace drawwell {
namespace {

bool is_number(std::string_view text) {
    if (text.starts_with('+')) text.remove_prefix(1);
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc() && end == text.data() + text.size() && std::isfinite(number);
}

}  // namespace

std::string csv_cell(std::string_view text) {
    constexpr std::string_view formula = "=+-@\t\r", ending = ",\"\n\r;\t";
    std::string cell;
    if (!text.empty() && formula.find(text.front()) != std::string_view::npos && !is_number(text))
        cell = "'";
    cell += text;
    if (cell.find_first_of(ending) == std::string::npos) return cell;
    std::string quoted = "\"";
    for (const char c : cell) quoted += c == '"' ? "\"\"" : std::string(1, c);
    return quoted + "\"";
}

}  // namespace drawwell

#include "cli/report/write_csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <fstream>
#include <iterator>
#include <string_view>
#include <vector>

#include "cli/read/units.h"
#include "cli/report/cell_labels.h"
#include "cli/report/pending_file.h"
#include "models/columns.h"

namespace drawwell {
namespace {

constexpr std::string_view time_header = "time_s";

/// `kg/s` as the end of a name: `_kg_s`.
std::string unit_suffix(std::string_view unit) {
    if (unit == "K") return "_c";
    if (unit == "1" || unit.empty()) return "";
    std::string suffix = "_";
    for (const char c : unit) {
        const auto letter = static_cast<unsigned char>(c);
        if (std::isalnum(letter) != 0)
            suffix += static_cast<char>(std::tolower(letter));
        else if (suffix.back() != '_')
            suffix += '_';
    }
    return suffix;
}

}  // namespace

std::string csv_name(const Column& column) {
    return column.name + unit_suffix(column.unit);
}

std::string csv_text(const Results& results) {
    fmt::memory_buffer text;
    const auto out = std::back_inserter(text);
    fmt::format_to(out, "{}", time_header);
    for (const Column& column : results.columns)
        for (const std::string& label : cell_labels(results, column))
            fmt::format_to(out, ",{}{}", csv_name(column), label);
    fmt::format_to(out, "\n");

    for (std::size_t step = 0; step < results.time.size(); ++step) {
        fmt::format_to(out, "{:.10g}", results.time[step]);
        for (const Column& column : results.columns)
            for (std::size_t cell = 0; cell < column.width; ++cell) {
                const double value = column.values.at(step * column.width + cell);
                if (!std::isfinite(value))
                    fmt::format_to(out, ",");
                else
                    fmt::format_to(out, ",{:.7g}", column.unit == "K" ? to_celsius(value) : value);
            }
        fmt::format_to(out, "\n");
    }
    return fmt::to_string(text);
}

void write_csv(const std::filesystem::path& file, const Results& results) {
    write_whole(file, csv_text(results));
}

bool is_drawwell_csv(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    std::string header;
    std::getline(stream, header);
    if (!header.starts_with(std::string(time_header) + ",")) return false;
    // A log of somebody's own may well begin with the time; it will not hold our columns only.
    std::string_view rest = std::string_view(header).substr(time_header.size());
    while (!rest.empty()) {
        rest.remove_prefix(1);
        const std::string_view cell = rest.substr(0, rest.find(','));
        const auto columns = all_columns();
        if (std::none_of(columns.begin(), columns.end(),
                         [&](const ColumnInfo& column) { return cell.starts_with(column.name); }))
            return false;
        rest.remove_prefix(cell.size());
    }
    return true;
}

}  // namespace drawwell

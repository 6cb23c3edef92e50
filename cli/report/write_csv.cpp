#include "cli/report/write_csv.h"

#include <fmt/format.h>

#include <cctype>
#include <cmath>
#include <iterator>
#include <string_view>

#include "cli/read/units.h"
#include "cli/read/visible_text.h"
#include "cli/report/cell_labels.h"
#include "cli/report/csv_cell.h"
#include "cli/report/file_kind.h"
#include "cli/report/pending_file.h"

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
            fmt::format_to(out, ",{}", csv_cell(visible(csv_name(column) + label)));
    fmt::format_to(out, ",{}\n", table_mark);

    const std::string mark = table_mark_of(FileKind::series_table);
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
        fmt::format_to(out, ",{}\n", mark);
    }
    return fmt::to_string(text);
}

void write_csv(const std::filesystem::path& file, const Results& results) {
    write_whole(file, csv_text(results));
}

}  // namespace drawwell

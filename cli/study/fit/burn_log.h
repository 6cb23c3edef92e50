#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "cli/read/units.h"

namespace drawwell {

/// A column's header taken apart: `plate_temperature_c[0.105m]`, `TC1 [°F]`, `draft_pa`.
struct LogHeader {
    std::string whole;  // as it stands in the file
    std::string name;   // `plate_temperature`, `TC1`
    std::string cell;   // `[0.105m]`; empty: none
    std::string unit;   // of the table of units; empty: none said
};

/// Takes one apart: the unit stands behind the name in brackets, or as a small ending.
LogHeader parse_header(std::string_view text);

/// What somebody's instruments wrote down during a burn.
struct BurnLog {
    std::string name;  // of the file, for messages
    std::vector<LogHeader> headers;
    std::vector<double> time;                     // [s] by the log's clock, increasing
    std::vector<std::size_t> line;                // of each row
    std::vector<std::vector<std::string>> cells;  // [column][row] as written
    std::size_t time_column = 0;

    /// The column of that header, as it stands or by its name alone; headers.size(): none.
    std::size_t find(std::string_view header) const;
};

/// Reads a table of comma, tab or semicolon with a header row (behind # stand remarks). One column
/// is the time, called time, elapsed or clock, in s, min or h by its header, or as h:mm:ss; a date
/// before it is passed over, and after midnight it goes on. The mark of a table of drawwell's is
/// left out. InputError names file, line and column of everything wrong, ten at most.
BurnLog read_log(std::string_view text, std::string_view file_name);

/// The numbers of a column in SI, read in that unit; NaN for gaps: empty cells and what loggers
/// write for an open input (nan, n/a, -, ol, err). InputError as above.
std::vector<double> log_values(const BurnLog& log, std::size_t column, std::string_view unit,
                               Quantity quantity);

/// A reading or figure of time: "90 s", "1.5 min", "0:04:00", "19:30".
double parse_log_time(std::string_view text);

}  // namespace drawwell

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "solver/results.h"

namespace drawwell {

/// What a builder noted of one column during a burn.
struct LoggedColumn {
    std::string column;         // `plate_temperature`
    std::size_t cell = 0;       // of a divided part
    std::vector<double> time;   // [s] after lighting
    std::vector<double> value;  // SI
};

/// Reads a log of a burn, CSV: the first column the time (`time_s` or `time_min`), the others named
/// as `export` heads them, `plate_temperature_c[0.105m]`; without a place in brackets the part's
/// first cell is meant, without the unit the same unit. Cells may be empty; the mark of a table of
/// drawwell's is passed over. InputError with the
/// line number: no such column, no number, no time.
std::vector<LoggedColumn> read_burn_log(std::string_view text, const Results& results);

}  // namespace drawwell

#pragma once

#include <filesystem>
#include <string>

#include "solver/results.h"

namespace drawwell {

/// The columns of a burn as text for a spreadsheet: one row an instant, one field a cell, a header
/// of names with their units (`plate_temperature_c[0.105m]`: the ring at 0.105 m), the mark of a
/// table last. Temperatures in degrees Celsius, all else in SI; what is not a number is left empty.
std::string csv_text(const Results& results);

/// How the table heads a column, without the place of a cell: `plate_temperature_c`.
std::string csv_name(const Column& column);

/// Writes that text. The file replaces an earlier one only when it is whole. FileError.
void write_csv(const std::filesystem::path& file, const Results& results);

}  // namespace drawwell

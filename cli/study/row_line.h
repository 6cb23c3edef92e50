#pragma once

#include <string>

#include "cli/study/row.h"

namespace drawwell {

/// A row as one line of JSON, to the last digit: as a journal keeps it and processes hand it on.
std::string line_of(const Row& row);

/// Reads one back. InputError: it is something else.
Row row_of(const std::string& line);

}  // namespace drawwell

#pragma once

#include <string>
#include <string_view>

namespace drawwell {

/// A text as a cell of a table (CSV), a heading's too: in quotes where it holds what would end it,
/// behind an apostrophe where a spreadsheet would take it for a formula. Plain numbers stay as they
/// are.
std::string csv_cell(std::string_view text);

}  // namespace drawwell

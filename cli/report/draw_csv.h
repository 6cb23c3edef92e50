#pragma once

#include <filesystem>
#include <string>

#include "models/draw_study.h"

namespace drawwell {

/// Every point of both curves for a spreadsheet, by flow; a curve without a point at that flow
/// leaves its field empty.
std::string draw_csv(const DrawStudy& study);

/// Whether the file begins like a table of draw_csv, hence may be replaced.
bool is_draw_csv(const std::filesystem::path& file);

}  // namespace drawwell

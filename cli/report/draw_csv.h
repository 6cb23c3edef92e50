#pragma once

#include <string>

#include "models/draw_study.h"

namespace drawwell {

/// Every point of both curves for a spreadsheet, by flow; a curve without a point at that flow
/// leaves its field empty. The mark of a table stands last.
std::string draw_csv(const DrawStudy& study);

}  // namespace drawwell

#pragma once

#include "cli/report/sheet/sheet_flow.h"
#include "models/library.h"
#include "models/stove.h"

namespace drawwell {

/// The section, as large as the rest of a page lets it be, its heights beside it and its widths
/// under it. Gives the scale, 1 to so many.
double add_section(SheetFlow& flow, const Stove& stove, const Library& library);

/// The plan, at the section's scale or a smaller one.
void add_plan(SheetFlow& flow, const Stove& stove, const Library& library, double scale);

}  // namespace drawwell

#pragma once

#include "cli/report/sheet/sheet_flow.h"
#include "cli/report/sheet/templates.h"

namespace drawwell {

/// Lays a template on as many pages as it needs, each with a line to check the print by. Too large
/// for paper: says so instead.
void add_template(SheetFlow& flow, const Template& shape);

}  // namespace drawwell

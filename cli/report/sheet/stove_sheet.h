#pragma once

#include <string>
#include <vector>

#include "cli/read/stove_draft.h"
#include "cli/report/sheet/paper.h"
#include "cli/report/sheet/sheet_flow.h"
#include "models/library.h"
#include "models/stove.h"

namespace drawwell {

/// What a sheet says of itself.
using SheetHead = SheetNote;

/// What stands on a sheet besides the stove.
struct SheetFrame {
    PaperSize paper = paper_a4;
    std::string file;       // the stove's, as it was named
    bool templates = true;  // full-size ones, at the end
    SheetHead head = {};
};

/// Pages to build a stove from: section, plan, areas, cut list, materials, order of work, cautions,
/// templates. Lines and texts only; no text touches a line or another text.
std::vector<PaperPage> stove_sheet(const Stove& stove, const Library& library,
                                   const SheetFrame& frame);

}  // namespace drawwell

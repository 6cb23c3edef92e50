#pragma once

#include "cli/report/sheet/sheet_flow.h"
#include "models/library.h"
#include "models/stove.h"

namespace drawwell {

/// Openings and ducts along the gas's way, with bars for their shares of the bore.
void add_gas_areas(SheetFlow& flow, const Stove& stove);
void add_volumes(SheetFlow& flow, const Stove& stove);
/// What each wall is made of, from the gas outwards.
void add_walls(SheetFlow& flow, const Stove& stove);
void add_flue_table(SheetFlow& flow, const Stove& stove);
void add_cut_list(SheetFlow& flow, const Stove& stove, const Library& library);
void add_holes(SheetFlow& flow, const Stove& stove);
void add_materials(SheetFlow& flow, const Stove& stove, const Library& library);

}  // namespace drawwell

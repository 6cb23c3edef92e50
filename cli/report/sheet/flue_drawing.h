#pragma once

#include "cli/report/sheet/sheet_flow.h"
#include "models/library.h"
#include "models/stove.h"

namespace drawwell {

/// The whole way of the gas to the open air to scale: the stove small, bells, every piece of the
/// flue as long and as steep as it is, a bypass; where each ends over the tunnel floor. Nothing
/// where the stove has no flue.
void add_flue_drawing(SheetFlow& flow, const Stove& stove, const Library& library);

}  // namespace drawwell

#pragma once

#include "validation/measured/stove_runs.h"

namespace drawwell {

/// A 150 mm system as the trade knows it to work: riser's top 790 mm over the feed's floor, 90 mm
/// from there to the plate, half the port closed, an ordinary flue of 2.5 m, the feed kept half
/// full of 40 mm sticks for two hours. Those four facts: common practice, no source; the rest our
/// choice.
Setup low_stove();

}  // namespace drawwell

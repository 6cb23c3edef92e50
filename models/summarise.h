#pragma once

#include "models/build_network.h"
#include "models/recorder.h"
#include "models/summary.h"
#include "solver/audit.h"

namespace drawwell {

/// The fuel at start and end, and what was put in between; for the heat that was released.
struct FuelStock {
    double heating_value_lost = 0;  // [J]
    double dry_wood_lost = 0;       // [kg]
};

/// Draws the answers from the columns and the books.
Summary summarise(const Stove& stove, const BuiltStove& built, const Recorder& recorder,
                  const Audit& audit, const FuelStock& fuel);

}  // namespace drawwell

#pragma once

#include <string>
#include <utility>

#include "cli/report/shown_unit.h"
#include "models/fittings/reading.h"

namespace drawwell {

/// The answer's key with its unit, and its value in that unit: `boils_after_s`, 1320.
std::pair<std::string, double> fitting_figure(const FittingAnswer& answer);

/// The answer as the page says it: "22 min", "1.4 kg", "never in this burn".
std::string fitting_text(const FittingAnswer& answer, UnitSystem system = UnitSystem::metric);

}  // namespace drawwell

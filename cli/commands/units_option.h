#pragma once

#include "cli/report/shown_unit.h"

namespace CLI {
class App;
}

namespace drawwell {

/// Adds --units, which fills `system`.
void add_units_option(CLI::App& command, UnitSystem& system);

}  // namespace drawwell

#pragma once

#include <string>
#include <vector>

#include "cli/report/shown_unit.h"
#include "models/summary.h"

namespace drawwell {

/// One line on a stretched law, in trade words: "riser lining up to 1130 °C; ...".
std::string stretched_text(const Stretched& stretched, UnitSystem system = UnitSystem::metric);

/// What the page says of a burn's stretched laws: those to be judged with care, one line each, and
/// one line for those of small effect. Empty: nothing worth saying.
std::vector<std::string> stretched_points(const Summary& summary,
                                          UnitSystem system = UnitSystem::metric);

/// The name of an effect: "nothing", "small", "judge with care".
std::string effect_name(Effect effect);

}  // namespace drawwell

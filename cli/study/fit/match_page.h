#pragma once

#include <string>

#include "cli/study/fit/match_log.h"

namespace drawwell {

/// What a match says, for the terminal.
std::string match_page(const Match& match, const std::string& log, bool colour);

/// The same for other programs.
std::string match_json(const Match& match, const std::string& log);

/// The same as a figure: each sensor as measured, as filed and as matched, and what is left over
/// the noise.
std::string match_svg(const Match& match, const std::string& log);

/// A difference of a sensor's readings [SI] as people read it: `1.2 K`, `15 g`, `0.3 Pa`.
std::string shown_difference(double value, const Sensor& sensor);

}  // namespace drawwell

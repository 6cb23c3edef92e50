#pragma once

#include <span>
#include <string>

#include "cli/report/web/page_run.h"

namespace drawwell {

/// What the page's script draws from, as JSON that may stand in HTML: the lines of every figure and
/// the temperatures that paint the sections, moments thinned so that the page stays small; numbers
/// to four digits, minutes and shown units, null where there is no number.
std::string page_data(std::span<const PageRun> runs);

}  // namespace drawwell

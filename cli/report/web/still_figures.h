#pragma once

#include <span>
#include <string>

#include "cli/report/web/page_run.h"

namespace drawwell {

/// Every figure of the page as HTML: its heading, a still picture for paper and where JavaScript is
/// off, and an empty place for the live one, told by its id. Of several runs the first is drawn in
/// full lines, the others dashed.
std::string figures_html(std::span<const PageRun> runs);

}  // namespace drawwell

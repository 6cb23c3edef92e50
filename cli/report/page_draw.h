#pragma once

#include "cli/report/page_writer.h"
#include "models/summary.h"

namespace drawwell {

/// The page's head: whether it draws, what helps where it does not, and the draw in figures.
void write_draw(Page& page, const Summary& summary);

}  // namespace drawwell

#pragma once

#include "cli/report/sheet/paper.h"

namespace drawwell {

/// A bar of a round length under a drawing at 1 to `scale`, with that length and scale in words.
void add_scale_bar(PaperPage& page, double left, double y, double scale);

}  // namespace drawwell

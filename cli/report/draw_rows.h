#pragma once

#include <optional>
#include <string>
#include <vector>

#include "models/draw_study.h"

namespace drawwell {

/// A line of the table of a draw.
struct DrawRow {
    double flow = 0;                        // [kg/s] into the feed
    std::optional<double> held, following;  // [Pa] push; none: not traced so far
    std::string marks;                      // what stands out here, in words
};

/// Some twenty flows evenly apart and, between them, every flow that stands out on either curve;
/// by rising flow.
std::vector<DrawRow> draw_rows(const DrawStudy& study);

}  // namespace drawwell

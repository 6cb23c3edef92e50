#pragma once

#include <string>
#include <vector>

#include "cli/report/section/geometry.h"
#include "models/stove.h"

namespace drawwell {

/// The outline of something that lies before or behind the cut, in the section's coordinates.
struct CutShape {
    std::string name;
    std::vector<FlatPoint> points;
    bool closed = true;
};

/// What is fitted, and side air, to scale; a bell stands beside the stove (`flue_way`), what damp
/// masonry holds is not to be seen.
std::vector<CutShape> fitting_shapes(const Stove& stove);

}  // namespace drawwell

#pragma once

#include <string>
#include <string_view>

#include "models/draw_study.h"

namespace drawwell {

/// The draw at one instant as a figure (SVG): the push over the flow on both curves, with all that
/// stands out on them. `title`: of the stove.
std::string draw_svg(const DrawStudy& study, std::string_view title);

}  // namespace drawwell

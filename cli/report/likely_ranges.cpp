#include "cli/report/likely_ranges.h"

#include <algorithm>

namespace drawwell {

const LikelyFigure* LikelyRanges::find(std::string_view answer) const {
    const auto found =
        std::find_if(figures.begin(), figures.end(),
                     [&](const LikelyFigure& figure) { return figure.answer == answer; });
    return found == figures.end() ? nullptr : &*found;
}

}  // namespace drawwell

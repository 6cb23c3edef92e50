#pragma once

#include <optional>
#include <vector>

#include "cli/report/web/page_run.h"

namespace drawwell {

/// Where the peak of a line lies on nine days of ten, of the spare draw its weakest moment.
struct LikelyBar {
    double minutes = 0;        // after lighting, of the peak in this burn
    double low = 0, high = 0;  // in the unit shown
};

/// The bar of a line of that run's figures; none: no other days were computed, or they say nothing
/// of this line.
std::optional<LikelyBar> likely_bar(const PageRun& run, const ShownSeries& series);

/// Where a line lies on nine days of ten, at each instant of the burn, in the unit shown.
struct LikelyBand {
    std::vector<double> low, high;
};

/// The band of a line of that run's figures; none: nothing was kept of it.
std::optional<LikelyBand> likely_band(const PageRun& run, const ShownSeries& series);

}  // namespace drawwell

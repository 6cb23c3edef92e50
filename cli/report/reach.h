#pragma once

#include <algorithm>
#include <cmath>
#include <limits>

namespace drawwell {

/// From the least to the most of what is finite; nothing taken: from infinity to less.
struct Reach {
    double least = std::numeric_limits<double>::infinity();
    double most = -std::numeric_limits<double>::infinity();

    void take(double value) {
        if (!std::isfinite(value)) return;
        least = std::min(least, value);
        most = std::max(most, value);
    }
    /// By shares of its span.
    void widen(double below, double above) {
        const double span = most - least;
        least -= below * span;
        most += above * span;
    }
};

}  // namespace drawwell

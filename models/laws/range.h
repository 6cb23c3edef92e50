#pragma once

#include <limits>
#include <string_view>

namespace drawwell {

/// Where a law holds; declared once, beside the law.
struct Range {
    std::string_view law;       // `bends`
    std::string_view quantity;  // that decides: `Reynolds number`
    std::string_view unit;      // SI of it; empty: a plain number
    double low = 0;             // the law holds from here
    double high = 0;            // to here, both included
    double uncertainty = 0;     // [-] relative, of what the law gives outside

    constexpr bool holds(double value) const { return value >= low && value <= high; }
};

inline constexpr double no_end = std::numeric_limits<double>::infinity();

}  // namespace drawwell

#pragma once

#include <bit>
#include <cstdint>

namespace drawwell {

/// Of a number above 0, to fourteen digits; 0 of others. A quarter of the library's cost, which a
/// march pays some hundred times: a third of the exponent is a guess within 4 %, and each of two
/// steps of Halley's method cubes the error.
inline double cube_root(double x) {
    if (!(x > 0)) return 0;
    double root = std::bit_cast<double>(std::bit_cast<std::uint64_t>(x) / 3 + 0x2A9F7893782DA1CE);
    for (int step = 0; step < 2; ++step) {
        const double cube = root * root * root;
        root *= (cube + 2 * x) / (2 * cube + x);
    }
    return root;
}

}  // namespace drawwell

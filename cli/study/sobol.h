#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace drawwell {

/// Points of a Sobol sequence in the unit cube, 0 <= x < 1: points[i][dimension]. The i-th depends
/// on seed, i and dimension alone, whatever their number: the sequence is shifted digit by digit.
std::vector<std::vector<double>> sobol_points(std::size_t count, std::size_t dimensions,
                                              std::uint64_t seed);

}  // namespace drawwell

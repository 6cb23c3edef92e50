#include "cli/study/sobol.h"

#include <boost/random/sobol.hpp>

namespace drawwell {
namespace {

std::uint64_t scrambled(std::uint64_t x) {  // splitmix64
    x += 0x9e3779b97f4a7c15;
    x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9;
    x = (x ^ (x >> 27)) * 0x94d049bb133111eb;
    return x ^ (x >> 31);
}

}  // namespace

std::vector<std::vector<double>> sobol_points(std::size_t count, std::size_t dimensions,
                                              std::uint64_t seed) {
    boost::random::sobol sequence(dimensions);
    std::vector<std::vector<double>> points(count, std::vector<double>(dimensions));
    for (auto& point : points)
        for (std::size_t d = 0; d < dimensions; ++d) {
            const std::uint64_t shifted = sequence() ^ scrambled(seed + scrambled(d));
            point[d] = static_cast<double>(shifted >> 11) * 0x1p-53;
        }
    return points;
}

}  // namespace drawwell

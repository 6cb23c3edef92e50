#pragma once

#include <cstdint>
#include <string>

namespace drawwell {

/// The seed of the stoves that are burned here.
inline constexpr std::uint32_t stove_seed = 20;

/// How long a random stove burns [s].
struct BurnLength {
    double least = 20 * 60.0, most = 3 * 3600.0;
};

/// A stove file's text, made up: `seed` and `index` decide all of it, but that the burn's length is
/// stretched between the ends given. Its bore is 80 to 320 mm and every other length a random
/// multiple of that, so that most stoves are sensible, some are ugly, and now and then one cannot
/// be built. All proportions are our choice.
std::string random_stove(std::uint32_t seed, std::uint32_t index, const BurnLength& length = {});

}  // namespace drawwell

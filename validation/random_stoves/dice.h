#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <random>
#include <span>

namespace drawwell {

/// Random numbers that are the same on every machine: the generator and its seeding are laid down
/// by the standard, which its distributions are not.
class Dice {
  public:
    /// One throw of many: depends on `seed` and `index` alone.
    Dice(std::uint32_t seed, std::uint32_t index) {
        std::seed_seq sequence{seed, index};
        bits_.seed(sequence);
    }

    double share() { return static_cast<double>(bits_() >> 11) * 0x1p-53; }  // 0 to below 1
    double between(double least, double most) { return least + (most - least) * share(); }
    /// The same by ratio: as often from 1 to 2 as from 2 to 4.
    double ratio(double least, double most) { return least * std::pow(most / least, share()); }
    bool chance(double probability) { return share() < probability; }
    /// A whole number, both ends included.
    int whole(int least, int most) {
        return least + static_cast<int>(share() * static_cast<double>(most - least + 1));
    }
    template <class T, std::size_t n>
    const T& one_of(const T (&choices)[n]) {
        return choices[static_cast<std::size_t>(share() * static_cast<double>(n))];
    }

  private:
    std::mt19937_64 bits_;
};

}  // namespace drawwell

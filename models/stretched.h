#pragma once

#include <string>

namespace drawwell {

/// What a stretched law does to the answers.
enum class Effect { nothing, small, judge_with_care };

/// A law that was used outside its range, or a material beyond its limit.
struct Stretched {
    std::string law;    // `bends`; of a material its name
    std::string where;  // `riser lining`; empty: wherever the law is used
    std::string what;   // the quantity: `Reynolds number`
    std::string unit;   // SI of the next three; empty: a plain number
    double low = 0;     // where the law holds; infinite: no end that way
    double high = 0;
    double worst = 0;          // furthest outside, where something hung on it
    double share_of_burn = 0;  // [-] of the time
    double weight = 0;         // [-] relative, what it may change the answer by
    Effect effect = Effect::nothing;
    std::string on;  // the answer it bears on most: `draw`, `plate`, `exit gas`; empty: none
};

}  // namespace drawwell

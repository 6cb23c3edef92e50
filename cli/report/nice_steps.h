#pragma once

namespace drawwell {

/// Round numbers evenly spread over a range.
struct NiceSteps {
    double first = 0, step = 1;
    int count = 0;     // at most about twice what was asked for
    int decimals = 0;  // that tell them apart

    double at(int index) const { return first + step * index; }
};

/// Steps of 1, 2 or 5 times a power of ten, about `wanted` of them, within [least, most]; none if
/// the range is empty or not finite.
NiceSteps nice_steps(double least, double most, int wanted);

}  // namespace drawwell

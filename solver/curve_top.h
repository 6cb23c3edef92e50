#pragma once

#include <functional>

namespace drawwell {

struct CurvePoint {
    double x = 0, y = 0;
};

/// The highest point of a curve on the way from `start` down to x = 0, to a thousandth of it.
///
/// The way is walked in equal parts until two in a row lie below the highest; given where the top
/// may be, a point on either side of it is tried first, and will do if it lies between. Then the
/// curve is asked where it may rise highest next to that: where the chords from either side meet,
/// be the top round or a kink. It ends where they meet no higher. Before x = 0 it looks ever
/// closer, for a hump there.
CurvePoint curve_top(const std::function<double(double)>& curve, CurvePoint start,
                     double expected = 0);

}  // namespace drawwell

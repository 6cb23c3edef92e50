#include "solver/curve_top.h"

#include <algorithm>
#include <cstddef>
#include <limits>
#include <vector>

namespace drawwell {
namespace {

constexpr int parts = 7;
constexpr double near_expected = 0.06;  // [-] of the way
constexpr double near_end = 0.015;      // [-] of the way
constexpr int most_refined = 10;
constexpr double same_height = 1e-3;  // [-] of the top

bool lower(const CurvePoint& a, const CurvePoint& b) {
    return a.y < b.y;
}

double slope(const CurvePoint& a, const CurvePoint& b) {
    return (a.y - b.y) / (a.x - b.x);
}

/// Where the chords over points i - 1, i and i + 1, i + 2 meet between i and i + 1, x falling;
/// where a neighbour is wanting, the other chord half way.
CurvePoint chords_meet(const std::vector<CurvePoint>& points, std::size_t i) {
    const CurvePoint &b = points[i], &c = points[i + 1];
    const double middle = (b.x + c.x) / 2;
    if (i == 0) return {middle, c.y + slope(c, points[i + 2]) * (middle - c.x)};
    const double before = slope(points[i - 1], b);
    if (i + 2 == points.size()) return {middle, b.y + before * (middle - b.x)};
    const double after = slope(c, points[i + 2]);
    if (!(after > before)) return std::max(b, c, lower);
    const double x = (b.y - c.y + after * c.x - before * b.x) / (after - before);
    if (!(x > c.x && x < b.x)) return std::max(b, c, lower);
    return {x, b.y + before * (x - b.x)};
}

}  // namespace

CurvePoint curve_top(const std::function<double(double)>& curve, CurvePoint start,
                     double expected) {
    std::vector<CurvePoint> known{start};  // x falling
    const auto top = [&] { return std::max_element(known.begin(), known.end(), lower); };
    const double aside = near_expected * start.x;
    if (expected > aside && expected < start.x - aside)
        for (const double x : {expected + aside, expected, expected - aside})
            known.push_back({x, curve(x)});
    if (known.size() < 4 || top() != known.begin() + 2) {
        known.resize(1);
        for (int i = parts - 1; i >= 0 && known.end() - top() < 3; --i) {
            const double x = start.x * i / parts;
            known.push_back({x, curve(x)});
        }
    }
    for (int refined = 0; refined < most_refined; ++refined) {
        const auto best = static_cast<std::size_t>(top() - known.begin());
        CurvePoint guess = known[best];
        // A trickle's losses differ from a flow's, so that a hump may stand close before the end.
        if (best + 1 == known.size() && known[best - 1].x - known[best].x > near_end * start.x)
            guess = {(known[best - 1].x + known[best].x) / 2,
                     std::numeric_limits<double>::infinity()};
        else if (best > 0)
            guess = std::max(guess, chords_meet(known, best - 1), lower);
        if (best + 1 < known.size()) guess = std::max(guess, chords_meet(known, best), lower);
        if (!(guess.y > known[best].y * (1 + same_height))) break;
        const auto place = std::find_if(known.begin(), known.end(),
                                        [&](const CurvePoint& at) { return at.x < guess.x; });
        known.insert(place, {guess.x, curve(guess.x)});
    }
    return *top();
}

}  // namespace drawwell

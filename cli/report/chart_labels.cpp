#include "cli/report/chart_labels.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace drawwell {
namespace {

constexpr double half_tall = 8;     // [px] of a text of 12
constexpr double apart = 4;         // [px] between the points that stand for a line
constexpr double line_crossed = 9;  // [px] farther away is better than one such point covered

}  // namespace

void ChartLabels::pass(ChartPoint from, ChartPoint to) {
    // What lies outside is of no interest, and a line may be very long.
    const auto clamped = [this](ChartPoint at) {
        return ChartPoint{std::clamp(at.x, bounds_.left, bounds_.right),
                          std::clamp(at.y, bounds_.top, bounds_.bottom)};
    };
    from = clamped(from);
    to = clamped(to);
    const int parts = 1 + static_cast<int>(std::hypot(to.x - from.x, to.y - from.y) / apart);
    for (int i = 0; i < parts; ++i) {
        const double share = static_cast<double>(i) / parts;
        passed_.push_back({from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)});
    }
}

std::optional<double> ChartLabels::cost(ChartBox box) const {
    if (box.left < bounds_.left || box.right > bounds_.right || box.top < bounds_.top ||
        box.bottom > bounds_.bottom)
        return {};
    for (const ChartBox& other : taken_)
        if (box.left < other.right && other.left < box.right && box.top < other.bottom &&
            other.top < box.bottom)
            return {};
    return line_crossed * static_cast<double>(std::count_if(
                              passed_.begin(), passed_.end(), [&](const ChartPoint& point) {
                                  return point.x > box.left && point.x < box.right &&
                                         point.y > box.top && point.y < box.bottom;
                              }));
}

std::optional<ChartBox> ChartLabels::place(ChartPoint at, double width) {
    constexpr std::array<ChartPoint, 8> ways{
        ChartPoint{1, -1}, ChartPoint{-1, -1}, ChartPoint{1, 1}, ChartPoint{-1, 1},
        ChartPoint{0, -1}, ChartPoint{0, 1},   ChartPoint{1, 0}, ChartPoint{-1, 0}};
    std::optional<ChartBox> best;
    double least = std::numeric_limits<double>::infinity();
    for (const double away : {2.0, 8.0, 16.0, 26.0, 38.0, 54.0, 76.0, 105.0, 140.0})
        for (const ChartPoint& way : ways) {
            const double x = at.x + way.x * (width / 2 + 6 + away);
            const double y = at.y + way.y * (half_tall + 5 + away);
            const ChartBox box{x - width / 2, y - half_tall, x + width / 2, y + half_tall};
            const auto crossed = cost(box);
            if (!crossed || *crossed + away >= least) continue;
            least = *crossed + away;
            best = box;
        }
    if (best) take(*best);
    return best;
}

}  // namespace drawwell

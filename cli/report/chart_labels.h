#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/report/svg_text.h"

namespace drawwell {

/// Edges in pixels.
struct ChartBox {
    double left = 0, top = 0, right = 0, bottom = 0;
};

/// Finds places for texts within a box that cover neither marks nor each other, and lines only
/// where there is no way round. All in pixels.
class ChartLabels {
  public:
    explicit ChartLabels(ChartBox bounds) : bounds_(bounds) {}

    /// Something that no text may cover.
    void take(ChartBox box) { taken_.push_back(box); }
    /// A line that texts had better keep off.
    void pass(ChartPoint from, ChartPoint to);
    /// The nearest free place of a text about a point, which is then taken; none: nowhere is free.
    std::optional<ChartBox> place(ChartPoint at, double width);

  private:
    /// What a place costs; none: it is taken, or not within the bounds.
    std::optional<double> cost(ChartBox box) const;

    ChartBox bounds_;
    std::vector<ChartBox> taken_;
    std::vector<ChartPoint> passed_;
};

}  // namespace drawwell

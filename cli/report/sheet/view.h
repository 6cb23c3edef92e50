#pragma once

#include <string>

#include "cli/report/sheet/cut_list.h"
#include "cli/report/sheet/paper.h"

namespace drawwell {

/// A stretch of the stove [m], seen from a side or from above.
struct Extent {
    double x_least = 0, x_most = 0, y_least = 0, y_most = 0;

    void take(double x, double y);
};

/// The usual scale, 1 to so many, at which it fits a box [mm].
double scale_for(const Extent& extent, double width, double height);

/// A drawing to scale: metres of the stove to millimetres on paper. y upwards.
class View {
  public:
    /// In the middle of a box's width, at its top.
    View(const Extent& extent, const PaperBox& box, double scale);

    double x(double metres) const { return left_ + (metres - extent_.x_least) * per_metre_; }
    double y(double metres) const { return top_ + (extent_.y_most - metres) * per_metre_; }
    PaperPoint at(double x_metres, double y_metres) const { return {x(x_metres), y(y_metres)}; }
    double length(double metres) const { return metres * per_metre_; }
    double bottom() const { return y(extent_.y_least); }

    /// A cut block of a material; nothing if it has no extent.
    void block(PaperPage& page, Stuff stuff, double x1, double y1, double x2, double y2) const;
    /// Gas stands here.
    void hollow(PaperPage& page, double x1, double y1, double x2, double y2) const;
    void frame(PaperPage& page, Pen pen, double x1, double y1, double x2, double y2) const;

  private:
    Extent extent_;
    double per_metre_, left_, top_;
};

/// How a cut material is tinted.
std::string tint(Stuff stuff);
inline constexpr const char* gas_tint = "#fdf3e9";

}  // namespace drawwell

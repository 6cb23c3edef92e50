#include "cli/report/sheet/view.h"

#include <algorithm>
#include <array>

namespace drawwell {

void Extent::take(double x, double y) {
    x_least = std::min(x_least, x);
    x_most = std::max(x_most, x);
    y_least = std::min(y_least, y);
    y_most = std::max(y_most, y);
}

double scale_for(const Extent& extent, double width, double height) {
    static constexpr std::array usual{1.,  2.,  3.,  4.,  5.,  6.,  8.,  10., 12.,
                                      15., 20., 25., 30., 40., 50., 60., 80., 100.};
    const double needed = 1000 * std::max((extent.x_most - extent.x_least) / width,
                                          (extent.y_most - extent.y_least) / height);
    for (const double scale : usual)
        if (scale >= needed) return scale;
    return needed;
}

View::View(const Extent& extent, const PaperBox& box, double scale)
    : extent_(extent),
      per_metre_(1000 / scale),
      left_((box.left + box.right - (extent.x_most - extent.x_least) * per_metre_) / 2),
      top_(box.top) {}

void View::block(PaperPage& page, Stuff stuff, double x1, double y1, double x2, double y2) const {
    if (!(x2 > x1) || !(y2 > y1)) return;
    page.lines.push_back(
        {rectangle({x(x1), y(y2), x(x2), y(y1)}), Pen::outline, true, tint(stuff)});
}

void View::hollow(PaperPage& page, double x1, double y1, double x2, double y2) const {
    if (!(x2 > x1) || !(y2 > y1)) return;
    page.lines.push_back({rectangle({x(x1), y(y2), x(x2), y(y1)}), Pen::frame, true, gas_tint});
}

void View::frame(PaperPage& page, Pen pen, double x1, double y1, double x2, double y2) const {
    page.lines.push_back({rectangle({x(x1), y(y2), x(x2), y(y1)}), pen, true});
}

std::string tint(Stuff stuff) {
    switch (stuff) {
        case Stuff::board:
            return "#e6d6b4";
        case Stuff::blanket:
            return "#f2ead2";
        case Stuff::brick:
            return "#cf9f83";
        case Stuff::fill:
            return "#dcd5cc";
        case Stuff::metal:
            return "#55636c";
        case Stuff::glass:
            return "#c4dfe6";
    }
    return "#ffffff";
}

}  // namespace drawwell

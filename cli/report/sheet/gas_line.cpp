#include "cli/report/sheet/gas_line.h"

#include <cmath>
#include <utility>
#include <vector>

#include "cli/report/section/geometry.h"

namespace drawwell {
namespace {

/// The middle of the gas's way, from the room to where it leaves the stove.
std::vector<FlatPoint> gas_line(const Stove& stove) {
    const double axis = riser_axis(stove), height = stove.axis_height();
    const GasOutlet outlet = gas_outlet(stove);
    std::vector<FlatPoint> way;
    if (stove.feed) way.push_back({0, stove.feed->mouth});
    way.push_back({stove.feed || !stove.tunnel ? 0 : -stove.tunnel->fire_width() / 2, height});
    if (axis > 0) way.push_back({axis, height});
    if (!stove.barrel || !stove.plate) {
        way.push_back({axis, stove.riser.top});
        if (!outlet.bell) way.push_back({axis, stove.riser.top + outlet.shown});
        return way;
    }
    const double turn = (stove.riser.top + stove.plate->underside) / 2;
    const double outside = riser_half_along(stove.riser, thickness(stove.riser.lining));
    const double beside = axis + (outside + barrel_inside(*stove.barrel) / 2) / 2;
    way.push_back({axis, turn});
    way.push_back({beside, turn});
    way.push_back({beside, stove.outlet_height()});
    way.push_back({axis + stove.barrel->diameter / 2 + outlet.shown, stove.outlet_height()});
    return way;
}

}  // namespace

void draw_gas_line(PaperPage& page, const View& view, const Stove& stove) {
    PaperLine line{{}, Pen::gas};
    for (const FlatPoint& point : gas_line(stove)) line.points.push_back(view.at(point.x, point.y));
    const std::vector<PaperPoint> points = line.points;
    page.lines.push_back(std::move(line));
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double dx = points[i].x - points[i - 1].x, dy = points[i].y - points[i - 1].y;
        const double length = std::hypot(dx, dy);
        if (length < 6) continue;
        // An arrow in the middle of the stretch.
        const double ux = dx / length, uy = dy / length;
        const PaperPoint tip{points[i - 1].x + dx / 2 + ux, points[i - 1].y + dy / 2 + uy};
        const PaperPoint foot{tip.x - 2.2 * ux, tip.y - 2.2 * uy};
        page.lines.push_back(
            {{tip, {foot.x - 0.8 * uy, foot.y + 0.8 * ux}, {foot.x + 0.8 * uy, foot.y - 0.8 * ux}},
             Pen::outline,
             true,
             "#c2410c"});
    }
}

}  // namespace drawwell

#include "cli/report/web/section_drawing.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/read/units.h"
#include "cli/report/web/heat_colour.h"

namespace drawwell {

void SectionDrawing::reach(double x, double y) {
    least_x_ = std::min(least_x_, x);
    most_x_ = std::max(most_x_, x);
    least_y_ = std::min(least_y_, y);
    most_y_ = std::max(most_y_, y);
}

void SectionDrawing::plain(double x0, double y0, double x1, double y1, std::string_view name) {
    if (!(x1 > x0) || !(y1 > y0)) return;
    reach(x0, y0);
    reach(x1, y1);
    svg_ += fmt::format(
        "<rect class=\"iron\" x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\">"
        "<title>{}</title></rect>\n",
        x0, -y1, x1 - x0, y1 - y0, escaped(name));
}

bool SectionDrawing::begin(std::string_view column, std::string_view name, std::size_t cells) {
    column_ = results_.find(column);
    if (!column_ || column_->width != cells || cells == 0) {
        column_ = nullptr;
        return false;
    }
    svg_ += fmt::format("<g data-c=\"{}\" data-n=\"{}\">\n", column, escaped(name));
    return true;
}

void SectionDrawing::piece(std::size_t cell, double x0, double y0, double x1, double y1) {
    if (x1 < x0) std::swap(x0, x1);
    if (y1 < y0) std::swap(y0, y1);
    reach(x0, y0);
    reach(x1, y1);
    const double kelvin = value_at(*column_, cell, moment_);
    // Half a millimetre more than its place, or seams show between neighbours.
    svg_ += fmt::format(
        "<rect class=\"cell\" data-i=\"{}\" x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" "
        "height=\"{:.1f}\" fill=\"{}\"/>\n",
        cell, x0, -y1, x1 - x0 + 0.5, y1 - y0 + 0.5, heat_colour(to_celsius(kelvin)));
}

void SectionDrawing::piece(std::size_t cell, const std::vector<ChartPoint>& corners) {
    std::string points;
    for (const ChartPoint& corner : corners) {
        reach(corner.x, corner.y);
        points += fmt::format("{:.1f},{:.1f} ", corner.x, -corner.y);
    }
    const double kelvin = value_at(*column_, cell, moment_);
    svg_ += fmt::format("<polygon class=\"cell\" data-i=\"{}\" points=\"{}\" fill=\"{}\"/>\n", cell,
                        points, heat_colour(to_celsius(kelvin)));
}

void SectionDrawing::end() {
    svg_ += "</g>\n";
    column_ = nullptr;
}

void SectionDrawing::hollow(double x0, double y0, double x1, double y1, std::string_view name) {
    reach(x0, y0);
    reach(x1, y1);
    svg_ += fmt::format(
        "<rect class=\"hollow\" x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\">"
        "<title>{}</title></rect>\n",
        x0, -y1, x1 - x0, y1 - y0, escaped(name));
}

void SectionDrawing::behind(const std::vector<ChartPoint>& corners, bool closed,
                            std::string_view name) {
    std::string way;
    for (const ChartPoint& corner : corners) {
        reach(corner.x, corner.y);
        way += fmt::format("{}{:.1f} {:.1f}", way.empty() ? "M" : "L", corner.x, -corner.y);
    }
    // On a light line, so that it shows on dark cells too.
    for (const std::string_view kind : {"behind halo", "behind"})
        svg_ += fmt::format("<path class=\"{}\" d=\"{}{}\"><title>{}</title></path>\n", kind, way,
                            closed ? "z" : "", escaped(name));
}

}  // namespace drawwell

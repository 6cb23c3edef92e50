#include "cli/report/web/plate_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "cli/read/units.h"
#include "cli/report/nice_steps.h"
#include "cli/report/svg_text.h"
#include "cli/report/web/edges.h"
#include "cli/report/web/heat_colour.h"

namespace drawwell {
namespace {

constexpr double left = 52, right = 334, top = 8, bottom = 168;

class PlateMap {
  public:
    PlateMap(const Results& results, const Column& plate, const std::vector<double>& radius)
        : results_(results), plate_(plate), edge_(cell_edges(radius, 0, {})) {
        for (double& edge : edge_) edge = to_millimetres(edge);
    }

    std::string svg() const {
        std::string svg = fmt::format(
            "<svg class=\"picture plate\" viewBox=\"0 0 340 204\" role=\"img\" "
            "aria-label=\"The plate over the burn: which ring cooks how, and when\" "
            "data-from=\"{:.4g}\" data-to=\"{:.6g}\" data-left=\"{}\" data-right=\"{}\">\n",
            to_minutes(results_.time.front()), to_minutes(results_.time.back()), left, right);
        for (std::size_t ring = 0; ring < plate_.width; ++ring) svg += ring_svg(ring);
        svg += axes_svg();
        svg +=
            fmt::format("<line class=\"now\" x1=\"{0}\" x2=\"{0}\" y1=\"{1}\" y2=\"{2}\"/></svg>\n",
                        left, top, bottom);
        return svg;
    }

  private:
    double x(double time) const {
        const double from = results_.time.front(), to = results_.time.back();
        return left + (to > from ? (time - from) / (to - from) : 0) * (right - left);
    }
    double y(double radius) const { return bottom - radius / edge_.back() * (bottom - top); }

    /// One ring over the burn, moments of one band joined.
    std::string ring_svg(std::size_t ring) const {
        const auto band = [&](std::size_t step) {
            return cooking_band(to_celsius(plate_.values[step * plate_.width + ring]));
        };
        std::string svg;
        std::size_t start = 0;
        for (std::size_t step = 1; step <= results_.time.size(); ++step) {
            if (step < results_.time.size() && band(step) == band(start)) continue;
            // It ends where the next moment begins.
            const double end = results_.time[std::min(step, results_.time.size() - 1)];
            const double x0 = x(results_.time[start]), x1 = x(end);
            const double y0 = y(edge_[ring + 1]), y1 = y(edge_[ring]);
            // A hair more than its place, or seams show between neighbours.
            svg += fmt::format(
                "<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\" "
                "fill=\"{}\"/>\n",
                x0, y0, x1 - x0 + 0.3, y1 - y0 + 0.3, cooking_bands[band(start)].colour);
            start = step;
        }
        return svg;
    }

    std::string axes_svg() const {
        std::string svg;
        const NiceSteps minutes =
            nice_steps(to_minutes(results_.time.front()), to_minutes(results_.time.back()), 6);
        for (int i = 0; i < minutes.count; ++i) {
            const double at = x(from_minutes(minutes.at(i)));
            svg += fmt::format(
                "<line class=\"rule\" x1=\"{0:.1f}\" x2=\"{0:.1f}\" y1=\"{1}\" y2=\"{2}\"/><text "
                "x=\"{0:.1f}\" y=\"{3}\" text-anchor=\"middle\">{4}</text>\n",
                at, bottom, bottom + 4, bottom + 16, tick_text(minutes, i));
        }
        const NiceSteps radii = nice_steps(0, edge_.back(), 4);
        for (int i = 0; i < radii.count; ++i)
            svg += fmt::format(
                "<line class=\"rule\" x1=\"{}\" x2=\"{}\" y1=\"{:.1f}\" y2=\"{:.1f}\"/><text "
                "x=\"{}\" y=\"{:.1f}\" text-anchor=\"end\">{}</text>\n",
                left - 4, left, y(radii.at(i)), y(radii.at(i)), left - 7, y(radii.at(i)) + 4,
                tick_text(radii, i));
        svg += fmt::format(
            "<text class=\"soft\" x=\"{}\" y=\"{}\" text-anchor=\"middle\">minutes after "
            "lighting</text>\n<text class=\"soft\" transform=\"translate(11 {}) rotate(-90)\" "
            "text-anchor=\"middle\">mm from the centre</text>\n",
            (left + right) / 2, bottom + 32, (top + bottom) / 2);
        return svg;
    }

    const Results& results_;
    const Column& plate_;
    std::vector<double> edge_;  // [mm] of the rings
};

}  // namespace

std::string plate_picture(const Results& results) {
    const Column* plate = results.find("plate_temperature");
    if (!plate || results.time.empty()) return "";
    const std::vector<double> radius = axis_positions(results, *plate);
    if (radius.size() != plate->width || !(radius.back() > 0)) return "";
    return PlateMap(results, *plate, radius).svg();
}

std::string band_key() {
    std::string key = "<ul class=\"scale\">";
    for (std::size_t i = 0; i < cooking_bands.size(); ++i) {
        const CookingBand& band = cooking_bands[i];
        std::string range;
        if (band.name.find("over") == std::string_view::npos && i > 0)
            range = fmt::format(", {:.0f}-{:.0f} °C", band.from, cooking_bands[i + 1].from);
        key += fmt::format("<li><i style=\"background:{}\"></i>{}{}</li>", band.colour, band.name,
                           range);
    }
    return key + "</ul>\n";
}

}  // namespace drawwell

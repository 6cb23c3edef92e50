#include "cli/report/sheet/templates.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/units.h"
#include "cli/report/section/geometry.h"
#include "cli/report/sheet/sheet_text.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

Template port_template(const Port& port) {
    Template shape{"Template: port",
                   "Hold it flat against the riser's foot, on the floor line.",
                   to_millimetres(port.width),
                   to_millimetres(port.height),
                   {}};
    shape.lines.push_back(
        {rectangle({0, 0, shape.width, shape.height}), true,
         fmt::format("port, {} wide and {} high", both_text(port.width), both_text(port.height))});
    shape.lines.push_back({{{shape.width / 2, 0}, {shape.width / 2, shape.height}},
                           false,
                           "its middle, on the tunnel's axis",
                           Pen::fold});
    return shape;
}

/// Quarters of closed outlines about an axis in the template's upper left corner.
class Quarter {
  public:
    void add(const std::vector<FlatPoint>& outline, const std::string& name) {
        TemplateLine line{{}, false, name};
        // From outside the quarter on, so that the part inside is one run.
        const auto outside = std::find_if(outline.begin(), outline.end(),
                                          [](const FlatPoint& point) { return point.y < 0; });
        const auto first = static_cast<std::size_t>(outside - outline.begin());
        const auto at = [&](std::size_t i) {
            const FlatPoint& point = outline[(first + i) % outline.size()];
            return PaperPoint{to_millimetres(point.x), to_millimetres(point.y)};
        };
        for (std::size_t i = 0; i < outline.size(); ++i) keep(line, at(i), at(i + 1));
        lines_.push_back(std::move(line));
    }
    void add_straight(FlatPoint from, FlatPoint to) {
        lines_.push_back({{{to_millimetres(from.x), to_millimetres(from.y)},
                           {to_millimetres(to.x), to_millimetres(to.y)}},
                          false,
                          "",
                          Pen::fold});
    }

    Template shape(std::string title, std::string use) && {
        Template shape{std::move(title), std::move(use), 0, 0, std::move(lines_)};
        const auto reach = [](const TemplateLine& line) {
            double most = 0;
            for (const PaperPoint& point : line.points) most = std::max(most, point.x);
            return line.name.empty() ? 1e9 : most;
        };
        std::stable_sort(
            shape.lines.begin(), shape.lines.end(),
            [&](const TemplateLine& a, const TemplateLine& b) { return reach(a) < reach(b); });
        // Neighbours look different.
        for (std::size_t i = 1; i < shape.lines.size(); i += 2) shape.lines[i].pen = Pen::fold;
        for (const TemplateLine& line : shape.lines)
            for (const PaperPoint& point : line.points) {
                shape.width = std::max(shape.width, point.x);
                shape.height = std::max(shape.height, point.y);
            }
        return shape;
    }

  private:
    /// The part of a side with neither coordinate negative, in the order it runs.
    static void keep(TemplateLine& line, PaperPoint from, PaperPoint to) {
        constexpr double far = 1e6;
        for (const PaperPoint& point : clipped(from, to, {0, 0, far, far}))
            if (line.points.empty() || point.x != line.points.back().x ||
                point.y != line.points.back().y)
                line.points.push_back(point);
    }

    std::vector<TemplateLine> lines_;
};

std::vector<FlatPoint> round_outline(double diameter) {
    std::vector<FlatPoint> points;
    constexpr int sides = 720;
    for (int i = 0; i < sides; ++i) {
        const double angle = 2 * pi * i / sides;
        points.push_back({diameter / 2 * std::cos(angle), diameter / 2 * std::sin(angle)});
    }
    return points;
}

std::string riser_size(const Riser& riser, double wall) {
    const double along = 2 * riser_half_along(riser, wall);
    if (!(riser.bore > 0))
        return fmt::format("{} along the tunnel, {} across it", both_text(along),
                           both_text(2 * riser_half_across(riser, wall)));
    return both_text(along) + (riser.octagonal ? " from flat to flat" : "");
}

Template riser_template(const Stove& stove) {
    const Riser& riser = stove.riser;
    constexpr int sides = 720;
    Quarter quarter;
    quarter.add(riser_outline(riser, 0, sides), "riser, inside: " + riser_size(riser, 0));
    const std::vector<Band> layers = bands(riser.lining);
    for (const Band& band : layers)
        quarter.add(riser_outline(riser, band.to, sides),
                    fmt::format("outside of {} of {}: {}", mm_text(band.layer->thickness),
                                spoken(band.layer->material), riser_size(riser, band.to)));
    if (stove.barrel)
        quarter.add(round_outline(barrel_inside(*stove.barrel)),
                    "barrel, inside, the rim of its floor ring: " +
                        both_text(barrel_inside(*stove.barrel)));
    if (stove.plate && stove.plate->hole)
        quarter.add(round_outline(*stove.plate->hole),
                    "cooking hole in the plate: " + both_text(*stove.plate->hole));
    if (riser.octagonal && !layers.empty()) {
        const std::vector<FlatPoint> inner = riser_outline(riser, 0),
                                     outer = riser_outline(riser, thickness(riser.lining));
        for (std::size_t i = 0; i < inner.size(); ++i)
            if (inner[i].x > 0 && inner[i].y > 0) quarter.add_straight(inner[i], outer[i]);
    }
    return std::move(quarter).shape(
        riser.octagonal ? "Template: riser of eight staves, and rings, a quarter"
                        : "Template: rings about the riser's axis, a quarter",
        "The upper left corner is the axis; turn the template about it four times. The key names "
        "the lines from that corner outwards.");
}

/// Where a pipe, or the gas alone, meets the barrel's round, rolled out flat.
Template outlet_template(const Stove& stove) {
    const GasOutlet outlet = gas_outlet(stove);
    const double radius = outlet.outer / 2;
    const double barrel = stove.barrel->diameter / 2;
    TemplateLine line{{},
                      true,
                      outlet.wall ? "hole for a pipe of " + both_text(2 * radius) + " outside"
                                  : "hole of " + both_text(2 * radius)};
    const double half = to_millimetres(barrel * std::asin(radius / barrel));
    for (const FlatPoint& point : round_outline(2 * radius))
        line.points.push_back({half + to_millimetres(barrel * std::asin(point.x / barrel)),
                               to_millimetres(radius + point.y)});
    Template shape{"Template: " + outlet.name,
                   fmt::format("Wrap it round the barrel, long way round, its middle {} over the "
                               "barrel's foot.",
                               both_text(stove.flue.outlet)),
                   2 * half,
                   to_millimetres(2 * radius),
                   {std::move(line)}};
    shape.lines.push_back({{{0, shape.height / 2}, {shape.width, shape.height / 2}},
                           false,
                           "level line through its middle",
                           Pen::fold});
    shape.lines.push_back(
        {{{half, 0}, {half, shape.height}}, false, "upright through its middle", Pen::fold});
    return shape;
}

}  // namespace

std::vector<Template> templates_for(const Stove& stove) {
    std::vector<Template> all;
    if (stove.port) all.push_back(port_template(*stove.port));
    all.push_back(riser_template(stove));
    if (stove.barrel && gas_outlet(stove).outer < stove.barrel->diameter)
        all.push_back(outlet_template(stove));
    return all;
}

}  // namespace drawwell

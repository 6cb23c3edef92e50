#include "cli/report/section/fitting_shapes.h"

#include <cmath>

#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr int sides_of_hole = 24;

CutShape box_shape(std::string name, double x1, double y1, double x2, double y2) {
    return {std::move(name), {{x1, y1}, {x2, y1}, {x2, y2}, {x1, y2}}};
}

struct Shapes {
    const Stove& stove;
    std::vector<CutShape>& all;

    double axis() const { return riser_axis(stove); }
    /// On the plate; drawn behind the axis, towards the flue.
    void on_plate(std::string name, double off_centre, double diameter, double height) const {
        if (!stove.plate) return;
        const double top = stove.plate->underside + stove.plate->thickness;
        all.push_back(box_shape(std::move(name), axis() + off_centre - diameter / 2, top,
                                axis() + off_centre + diameter / 2, top + height));
    }

    void operator()(const Pot& pot) const {
        on_plate("pot, " + pot.name, pot.off_centre, pot.diameter, pot.height);
    }
    void operator()(const Griddle& griddle) const {
        on_plate("griddle, " + griddle.name, -griddle.off_centre, griddle.diameter,
                 griddle.thickness);
    }
    void operator()(const OvenTube& oven) const {
        if (!stove.barrel) return;
        const double half = oven_length(stove) / 2, outer = oven.bore / 2 + thickness(oven.wall);
        all.push_back(box_shape("oven tube, " + oven.name, axis() - half, oven.height - outer,
                                axis() + half, oven.height + outer));
    }
    void operator()(const Window& pane) const {
        all.push_back(box_shape("window, " + pane.name, 0, 0, pane.width, pane.height));
    }
    void operator()(const Grid& grid) const {
        if (!stove.tunnel) return;
        const double at = stove.feed ? stove.feed->depth / 2 : 0;
        all.push_back({"grid, " + grid.name, {{at, 0}, {at, stove.tunnel->fire_height()}}, false});
    }
    void operator()(const AirChannel& channel) const {
        if (!stove.tunnel) return;
        const double top = -thickness(stove.tunnel->lining);
        all.push_back(box_shape("air channel, " + channel.name, 0, top - channel.height,
                                channel.length, top));
    }
    void operator()(const Bell&) const {}
    void operator()(const Damp&) const {}
};

CutShape hole_shape(const std::string& name, FlatPoint centre, double radius) {
    CutShape hole{name, {}};
    for (int i = 0; i < sides_of_hole; ++i) {
        const double angle = 2 * constants::pi * i / sides_of_hole;
        hole.points.push_back(
            {centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)});
    }
    return hole;
}

void add_side_air(const Stove& stove, const SideAir& air, std::vector<CutShape>& all) {
    const std::string name = "side air, " + air.name;
    if (air.holes == 0) {
        all.push_back(box_shape(name, -air.slot_width / 2, air.height - air.slot_height / 2,
                                air.slot_width / 2, air.height + air.slot_height / 2));
        return;
    }
    // In a row along the fire, evenly; how they are spread is the builder's.
    const double row = stove.tunnel ? stove.fire_depth() : air.holes * air.hole_diameter;
    for (int i = 0; i < air.holes; ++i)
        all.push_back(hole_shape(name, {row * ((i + 0.5) / air.holes - 0.5), air.height},
                                 air.hole_diameter / 2));
}

}  // namespace

std::vector<CutShape> fitting_shapes(const Stove& stove) {
    std::vector<CutShape> all;
    for (const SideAir& air : stove.side_air) add_side_air(stove, air, all);
    for (const Fitting& fitting : stove.fittings) std::visit(Shapes{stove, all}, fitting);
    return all;
}

}  // namespace drawwell

#include "cli/report/sheet/section_fittings.h"

#include <algorithm>

#include "cli/report/sheet/geometry.h"

namespace drawwell {
namespace {

struct Drawn {
    PaperPage& page;
    const View& view;
    const Stove& stove;

    double axis() const { return riser_axis(stove); }
    void frame(double x1, double y1, double x2, double y2) const {
        view.frame(page, Pen::hidden, x1, y1, x2, y2);
    }
    /// On the plate; drawn behind the axis, towards the flue.
    void on_plate(double off_centre, double diameter, double height) const {
        if (!stove.plate) return;
        const double top = stove.plate->underside + stove.plate->thickness;
        frame(axis() + off_centre - diameter / 2, top, axis() + off_centre + diameter / 2,
              top + height);
    }

    void operator()(const Pot& pot) const { on_plate(pot.off_centre, pot.diameter, pot.height); }
    void operator()(const Griddle& griddle) const {
        on_plate(-griddle.off_centre, griddle.diameter, griddle.thickness);
    }
    void operator()(const OvenTube& oven) const {
        if (!stove.barrel) return;
        const double half = stove.barrel->diameter / 2,
                     outer = oven.bore / 2 + thickness(oven.wall);
        frame(axis() - half, oven.height - outer, axis() + half, oven.height + outer);
    }
    void operator()(const Window& pane) const { frame(0, 0, pane.width, pane.height); }
    void operator()(const Grid&) const {
        if (!stove.tunnel) return;
        const double at = stove.feed ? stove.feed->depth / 2 : 0;
        page.lines.push_back(
            {{view.at(at, 0), view.at(at, stove.tunnel->fire_height())}, Pen::hidden});
    }
    void operator()(const AirChannel& channel) const {
        if (!stove.tunnel) return;
        const double top = -thickness(stove.tunnel->lining);
        frame(0, top - channel.height, channel.length, top);
    }
    void operator()(const Bell&) const {}
    void operator()(const Damp&) const {}
};

/// Of a row of holes [m].
double row_length(const Stove& stove, const SideAir& air) {
    return stove.tunnel ? stove.fire_depth() : air.holes * air.hole_diameter;
}

void draw_side_air(PaperPage& page, const View& view, const Stove& stove) {
    for (const SideAir& air : stove.side_air) {
        if (air.holes > 0) {
            // In a row along the fire, evenly; how they are spread is the builder's.
            const double depth = row_length(stove, air);
            for (int i = 0; i < air.holes; ++i) {
                const double x = depth * ((i + 0.5) / air.holes - 0.5);
                page.lines.push_back(
                    {circle(view.at(x, air.height), view.length(air.hole_diameter / 2)),
                     Pen::hidden, true});
            }
        } else {
            view.frame(page, Pen::hidden, -air.slot_width / 2, air.height - air.slot_height / 2,
                       air.slot_width / 2, air.height + air.slot_height / 2);
        }
    }
}

}  // namespace

void take_fittings(Extent& extent, const Stove& stove) {
    const double axis = riser_axis(stove);
    for (const Fitting& fitting : stove.fittings) {
        if (const auto* channel = std::get_if<AirChannel>(&fitting); channel && stove.tunnel)
            extent.take(channel->length, -thickness(stove.tunnel->lining) - channel->height);
        if (!stove.plate) continue;
        const double top = stove.plate->underside + stove.plate->thickness;
        if (const auto* pot = std::get_if<Pot>(&fitting))
            extent.take(axis + pot->off_centre + pot->diameter / 2, top + pot->height);
        if (const auto* griddle = std::get_if<Griddle>(&fitting))
            extent.take(axis - griddle->off_centre - griddle->diameter / 2,
                        top + griddle->thickness);
    }
    for (const SideAir& air : stove.side_air) {
        const double half = (air.holes > 0 ? row_length(stove, air) : air.slot_width) / 2;
        const double reach = (air.slot_height + air.hole_diameter) / 2;
        extent.take(-half - air.hole_diameter / 2, air.height - reach);
        extent.take(half + air.hole_diameter / 2, air.height + reach);
    }
}

void draw_section_fittings(PaperPage& page, const View& view, const Stove& stove) {
    draw_side_air(page, view, stove);
    for (const Fitting& fitting : stove.fittings) std::visit(Drawn{page, view, stove}, fitting);
}

}  // namespace drawwell

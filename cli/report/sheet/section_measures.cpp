#include "cli/report/sheet/section_measures.h"

#include <algorithm>
#include <utility>

#include "cli/report/section/fitting_shapes.h"
#include "cli/report/section/geometry.h"

namespace drawwell {

Extent section_extent(const Stove& stove) {
    const double axis = riser_axis(stove);
    const GasOutlet outlet = gas_outlet(stove);
    Extent all{axis, axis, riser_stands_at(stove), stove.riser.top};
    all.take(back_end(stove), 0);
    all.take(riser_end(stove), 0);
    all.take(axis - riser_half_along(stove.riser, thickness(stove.riser.lining)), 0);
    if (stove.feed) {
        all.take(-stove.feed->depth / 2 - thickness(stove.feed->lining), stove.feed->mouth);
        all.take(roof_start(stove), stove.feed->mouth);
    }
    if (stove.tunnel) {
        all.take(0, -thickness(stove.tunnel->lining));
        if (!stove.feed) all.take(-stove.tunnel->fire_width() / 2, 0);
        all.take(0, std::max(stove.tunnel->height, stove.tunnel->fire_height()) +
                        thickness(stove.tunnel->roof));
    }
    if (stove.barrel && stove.plate) {
        const double outside = stove.barrel->diameter / 2 + thickness(stove.barrel->jacket);
        const double half = std::max(outside, stove.plate->diameter / 2);
        all.take(axis - half, stove.barrel_foot());
        all.take(axis + std::max(half, stove.barrel->diameter / 2 + outlet.shown),
                 stove.plate->underside +
                     std::max(stove.plate->thickness, stove.plate->hole_cover.value_or(0)));
        all.take(axis, stove.outlet_height() - outlet.outer / 2);
        all.take(axis, stove.outlet_height() + outlet.outer / 2);
    } else if (!outlet.bell) {
        all.take(axis - outlet.outer / 2, stove.riser.top + outlet.shown);
        all.take(axis + outlet.outer / 2, stove.riser.top);
    }
    for (const CutShape& shape : fitting_shapes(stove))
        for (const FlatPoint& point : shape.points) all.take(point.x, point.y);
    return all;
}

std::vector<LedgerRow> section_heights(const View& view, const Stove& stove) {
    const double axis = riser_axis(stove);
    std::vector<LedgerRow> rows;
    const auto add = [&](std::string name, double x, double height) {
        rows.push_back({view.at(x, height), std::move(name), height});
    };
    if (stove.feed)
        add("mouth of the feed", stove.feed->depth / 2 + thickness(stove.feed->lining),
            stove.feed->mouth);
    if (stove.tunnel) {
        add("tunnel floor", riser_end(stove), 0);
        add("tunnel roof, inside", tunnel_end(stove), stove.tunnel->height);
        if (stove.tunnel->firebox_length > 0)
            add("firebox roof, inside", stove.tunnel->firebox_length, stove.tunnel->fire_height());
    }
    if (stove.port) add("port's upper edge", axis, riser_stands_at(stove) + stove.port->height);
    if (!stove.tunnel) add("foot of the riser", riser_half_along(stove.riser, 0), stove.riser.foot);
    add("top of the riser", axis + riser_half_along(stove.riser, thickness(stove.riser.lining)),
        stove.riser.top);
    if (stove.barrel && stove.plate) {
        const double edge = axis + stove.plate->diameter / 2;
        add("plate, underside", edge, stove.plate->underside);
        add("plate, cooking face", edge, stove.plate->underside + stove.plate->thickness);
        add("barrel's foot", axis + stove.barrel->diameter / 2, stove.barrel_foot());
        if (!stove.barrel->jacket.empty()) {
            const double jacket =
                axis + stove.barrel->diameter / 2 + thickness(stove.barrel->jacket);
            add("jacket, lower edge", jacket, stove.barrel->jacket_from);
            add("jacket, upper edge", jacket, stove.barrel->jacket_to);
        }
        const GasOutlet outlet = gas_outlet(stove);
        add(outlet.name + ", centre",
            axis + stove.barrel->diameter / 2 + (outlet.wall ? outlet.shown : 0),
            stove.outlet_height());
    }
    for (const SideAir& air : stove.side_air) add("side air, " + air.name, 0, air.height);
    for (const Fitting& fitting : stove.fittings)
        if (const auto* oven = std::get_if<OvenTube>(&fitting); oven && stove.barrel)
            add("oven tube, axis", axis + stove.barrel->diameter / 2, oven->height);
    return rows;
}

std::vector<Span> section_widths(const Stove& stove) {
    const double axis = riser_axis(stove);
    std::vector<Span> spans;
    const auto about_axis = [&](const char* name, double half, double height) {
        spans.push_back({name, axis - half, axis + half, height});
    };
    const double wall = thickness(stove.riser.lining);
    if (stove.feed)
        spans.push_back(
            {"feed, inside", -stove.feed->depth / 2, stove.feed->depth / 2, feed_foot(stove)});
    if (stove.tunnel) {
        if (stove.tunnel->firebox_length > 0)
            spans.push_back({"feed's centre to ledge", 0, stove.tunnel->firebox_length, 0});
        spans.push_back({"feed's centre to riser's", 0, axis, 0});
    }
    about_axis("riser, inside", riser_half_along(stove.riser, 0), stove.riser.top);
    about_axis("riser, outside", riser_half_along(stove.riser, wall), stove.riser.top);
    if (stove.barrel && stove.plate) {
        about_axis("barrel, outside", stove.barrel->diameter / 2, stove.barrel_foot());
        if (!stove.barrel->jacket.empty())
            about_axis("jacket, outside",
                       stove.barrel->diameter / 2 + thickness(stove.barrel->jacket),
                       stove.barrel->jacket_from);
        about_axis("plate", stove.plate->diameter / 2, stove.plate->underside);
    }
    return spans;
}

}  // namespace drawwell

#include "cli/report/section/geometry.h"

#include <algorithm>
#include <cmath>

#include "models/components/duct_shape.h"
#include "solver/constants.h"

namespace drawwell {

using constants::pi;

double riser_half_along(const Riser& riser, double wall) {
    return (riser.bore > 0 ? riser.bore : riser.depth) / 2 + wall;
}

double riser_half_across(const Riser& riser, double wall) {
    return (riser.bore > 0 ? riser.bore : riser.width) / 2 + wall;
}

std::vector<FlatPoint> riser_outline(const Riser& riser, double wall, int sides) {
    const double along = riser_half_along(riser, wall), across = riser_half_across(riser, wall);
    if (!(riser.bore > 0))
        return {{-along, -across}, {along, -across}, {along, across}, {-along, across}};
    std::vector<FlatPoint> points;
    const int count = riser.octagonal ? 8 : std::max(sides, 24);
    // An octagon's flats face the tunnel, its corners lie half a side beside them.
    const double radius = riser.octagonal ? along / std::cos(pi / 8) : along;
    const double first = riser.octagonal ? pi / 8 : 0;
    for (int i = 0; i < count; ++i) {
        const double angle = first + 2 * pi * i / count;
        points.push_back({radius * std::cos(angle), radius * std::sin(angle)});
    }
    return points;
}

std::vector<Band> bands(const BuildUp& wall) {
    std::vector<Band> all;
    double from = 0;
    for (const Layer& layer : wall) {
        all.push_back({&layer, from, from + layer.thickness});
        from += layer.thickness;
    }
    return all;
}

std::vector<TunnelStretch> tunnel_stretches(const Stove& stove) {
    if (!stove.tunnel) return {};
    const Tunnel& tunnel = *stove.tunnel;
    const double from = back_wall(stove), to = tunnel_end(stove);
    if (!(tunnel.firebox_length > 0)) return {{from, to, tunnel.width, tunnel.height}};
    const double ledge = std::clamp(tunnel.firebox_length, from, to);
    return {{from, ledge, tunnel.fire_width(), tunnel.fire_height()},
            {ledge, to, tunnel.width, tunnel.height}};
}

double riser_axis(const Stove& stove) {
    return stove.tunnel ? stove.tunnel->length : 0;
}

double riser_stands_at(const Stove& stove) {
    return stove.tunnel ? 0 : stove.riser.foot;
}

double back_wall(const Stove& stove) {
    return stove.feed ? -stove.feed->depth / 2 : 0;
}

double back_end(const Stove& stove) {
    return back_wall(stove) - (stove.feed ? thickness(stove.feed->foot_lining) : 0);
}

double riser_end(const Stove& stove) {
    return riser_axis(stove) + riser_half_along(stove.riser, thickness(stove.riser.lining));
}

double roof_start(const Stove& stove) {
    return stove.feed ? stove.feed->depth / 2 + thickness(stove.feed->lining) : 0;
}

double tunnel_end(const Stove& stove) {
    const double outside = riser_half_along(stove.riser, thickness(stove.riser.lining));
    const double least = stove.feed ? stove.feed->depth / 2 : 0;
    return std::max(stove.tunnel->length - outside, std::min(least, stove.tunnel->length));
}

double too_short_by(const Stove& stove) {
    if (!stove.tunnel || !stove.feed) return 0;
    const double outside = riser_half_along(stove.riser, thickness(stove.riser.lining));
    return std::max(roof_start(stove) + outside - stove.tunnel->length, 0.0);
}

double stove_side(const Stove& stove) {
    if (!stove.barrel) return riser_end(stove);
    const double barrel = stove.barrel->diameter / 2 + thickness(stove.barrel->jacket);
    return riser_axis(stove) + std::max(barrel, stove.plate ? stove.plate->diameter / 2 : 0.0);
}

const BuildUp& connector_wall(const Stove& stove) {
    return stove.barrel ? stove.barrel->shell : stove.flue.sections.front().wall;
}

GasOutlet gas_outlet(const Stove& stove) {
    if (stove.flue.sections.empty()) {
        const double bore = riser_section(stove.riser).equal_bore();
        return {.bore = bore, .outer = bore, .shown = bore / 2, .name = "open outlet"};
    }
    for (const Fitting& fitting : stove.fittings)
        if (const auto* bell = std::get_if<Bell>(&fitting)) {
            const double barrel = stove.barrel ? stove.barrel->diameter / 2 : 0;
            const double clear = stove_side(stove) - riser_axis(stove) - barrel;
            return {.bell = bell,
                    .bore = bell->opening,
                    .outer = bell->opening + 2 * thickness(connector_wall(stove)),
                    .shown = clear + thickness(bell->wall),
                    .wall = &connector_wall(stove),
                    .name = "bell connector"};
        }
    const FlueSection& first = stove.flue.sections.front();
    return {.flue = &first,
            .bore = first.bore,
            .outer = outer_diameter(first),
            .shown = std::min(first.length, first.bore),
            .wall = &first.wall,
            .name = "flue outlet"};
}

double oven_length(const Stove& stove) {
    const double skin =
        riser_section(stove.riser).equivalent_radius() + thickness(stove.riser.lining);
    return oven_tube_length(skin, barrel_inside(*stove.barrel) / 2);
}

double feed_foot(const Stove& stove) {
    return stove.tunnel ? stove.tunnel->fire_height() : stove.axis_height();
}

double barrel_inside(const Barrel& barrel) {
    return barrel.diameter - 2 * thickness(barrel.shell);
}

double outer_diameter(const FlueSection& section) {
    return section.bore + 2 * thickness(section.wall);
}

std::optional<Doorway> doorway(const Stove& stove) {
    if (stove.port) return Doorway{stove.port->width, stove.port->height, true};
    if (stove.tunnel) return Doorway{stove.tunnel->width, stove.tunnel->height, false};
    return {};
}

}  // namespace drawwell

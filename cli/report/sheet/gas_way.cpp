#include "cli/report/sheet/gas_way.h"

#include <algorithm>
#include <cmath>
#include <variant>

#include "cli/report/section/geometry.h"
#include "models/components/duct_shape.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

double disc(double diameter) {
    return pi / 4 * diameter * diameter;
}

/// The riser's outside, corners and all [m2].
double riser_footprint(const Stove& stove) {
    const std::vector<FlatPoint> outline =
        riser_outline(stove.riser, thickness(stove.riser.lining), 720);
    double twice = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const FlatPoint& a = outline[i];
        const FlatPoint& b = outline[(i + 1) % outline.size()];
        twice += a.x * b.y - b.x * a.y;
    }
    return std::abs(twice) / 2;
}

/// What a tube takes of the space round the riser at its axis [m2].
double beside(const OvenTube& oven, const Stove& stove) {
    return (oven.bore + 2 * thickness(oven.wall)) * oven_length(stove);
}

double space_round_riser(const Stove& stove) {
    return disc(barrel_inside(*stove.barrel)) - riser_footprint(stove);
}

}  // namespace

std::vector<GasArea> gas_areas(const Stove& stove) {
    std::vector<GasArea> all;
    const DuctSection bore = riser_section(stove.riser);
    const auto add = [&](std::string name, double area, bool aside = false) {
        all.push_back({std::move(name), area, area / bore.area, aside});
    };
    if (stove.feed) add("feed, empty of wood", stove.feed->width * stove.feed->depth);
    for (const SideAir& air : stove.side_air) add("side air, " + air.name, air.area, true);
    for (const Fitting& fitting : stove.fittings)
        if (const auto* channel = std::get_if<AirChannel>(&fitting))
            add("air channel, " + channel->name, channel->width * channel->height, true);
    if (stove.tunnel) {
        const Tunnel& tunnel = *stove.tunnel;
        if (tunnel.firebox_length > 0) add("firebox", tunnel.fire_width() * tunnel.fire_height());
        for (const Fitting& fitting : stove.fittings)
            if (const auto* grid = std::get_if<Grid>(&fitting))
                add("through the grid, " + grid->name,
                    grid->free_share() * tunnel.fire_width() * tunnel.fire_height());
        add("tunnel", tunnel.width * tunnel.height);
    }
    if (stove.port) add("port", stove.port->width * stove.port->height);
    add("riser", bore.area);
    if (stove.barrel && stove.plate) {
        add("opening under the plate", bore.perimeter * (stove.plate->underside - stove.riser.top));
        add("space round the riser", space_round_riser(stove));
        for (const Fitting& fitting : stove.fittings)
            if (const auto* oven = std::get_if<OvenTube>(&fitting))
                add("past the oven tube, " + oven->name,
                    space_round_riser(stove) - beside(*oven, stove));
    }
    if (stove.barrel && stove.flue.sections.empty()) add("open outlet", bore.area);
    if (stove.bypass) add("bypass", disc(stove.bypass->bore), true);
    for (const Fitting& fitting : stove.fittings)
        if (const auto* bell = std::get_if<Bell>(&fitting))
            add("into the bell, " + bell->name, disc(bell->opening));
    for (const FlueSection& section : stove.flue.sections)
        add("flue, " + section.name, disc(section.bore));
    return all;
}

const GasArea* narrowest(const std::vector<GasArea>& areas) {
    const GasArea* least = nullptr;
    for (const GasArea& area : areas)
        if (!area.aside && (!least || area.area < least->area)) least = &area;
    return least;
}

std::vector<GasVolume> gas_volumes(const Stove& stove) {
    std::vector<GasVolume> all;
    if (stove.feed) {
        const double roof = stove.tunnel ? stove.tunnel->fire_height() : stove.axis_height();
        all.push_back({"feed over the fire",
                       stove.feed->width * stove.feed->depth * (stove.feed->mouth - roof)});
    }
    double tunnel = 0;
    for (const TunnelStretch& part : tunnel_stretches(stove))
        tunnel += (part.to - part.from) * part.width * part.height;
    if (tunnel > 0) all.push_back({"tunnel with the firebox", tunnel});
    all.push_back(
        {"riser", riser_section(stove.riser).area * (stove.riser.top - riser_stands_at(stove))});
    if (stove.barrel && stove.plate) {
        const double inside = disc(barrel_inside(*stove.barrel));
        all.push_back({"under the plate", inside * (stove.plate->underside - stove.riser.top)});
        all.push_back({"round the riser",
                       space_round_riser(stove) * (stove.riser.top - stove.barrel_foot())});
    }
    for (const Fitting& fitting : stove.fittings)
        if (const auto* bell = std::get_if<Bell>(&fitting)) {
            const double floor =
                bell->diameter > 0 ? disc(bell->diameter) : bell->width * bell->depth;
            all.push_back({"bell, " + bell->name, floor * bell->height});
        }
    for (const FlueSection& section : stove.flue.sections)
        all.push_back({"flue, " + section.name, disc(section.bore) * section.length});
    return all;
}

}  // namespace drawwell

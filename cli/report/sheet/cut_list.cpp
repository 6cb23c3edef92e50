#include "cli/report/sheet/cut_list.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/report/section/flue_way.h"
#include "cli/report/section/geometry.h"
#include "cli/report/sheet/fitting_pieces.h"
#include "cli/report/sheet/wall_pieces.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

void add_feed(std::vector<Piece>& all, const Stove& stove, const Library& library) {
    if (!stove.feed) return;
    const Feed& feed = *stove.feed;
    const double roof = stove.tunnel ? stove.tunnel->fire_height() : stove.axis_height();
    add_box(all, {"feed", feed.width, feed.depth, feed.mouth - roof}, feed.lining, library);
    if (!stove.tunnel) return;
    for (const Band& band : bands(feed.foot_lining)) {
        add_flat(all, "wall behind the fire", 1, *band.layer, feed.width + 2 * band.from, roof);
        add_flat(all, "side of the fire, from there to the feed's centre", 2, *band.layer,
                 feed.depth / 2 + band.to, roof);
    }
}

void add_tunnel(std::vector<Piece>& all, const Stove& stove) {
    if (!stove.tunnel) return;
    const Tunnel& tunnel = *stove.tunnel;
    const double wall = thickness(tunnel.lining);
    const double widest =
        std::max(tunnel.width, tunnel.firebox_length > 0 ? tunnel.fire_width() : 0);
    for (const Band& band : bands(tunnel.lining))
        add_flat(all, "tunnel floor, right under the riser", 1, *band.layer, widest + 2 * wall,
                 riser_end(stove) - back_end(stove));
    const std::vector<TunnelStretch> stretches = tunnel_stretches(stove);
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const TunnelStretch& part = stretches[i];
        const std::string name = stretches.size() > 1 && i == 0 ? "firebox" : "tunnel";
        const double side_from = std::max(part.from, 0.0);
        const double roof_from = std::max(part.from, roof_start(stove));
        for (const Band& band : bands(tunnel.lining))
            add_flat(all, name + " side", 2, *band.layer, part.to - side_from, part.height);
        for (const Band& band : bands(tunnel.roof))
            add_flat(all, name + " roof", 1, *band.layer, part.to - roof_from,
                     part.width + 2 * wall);
    }
    if (stretches.size() > 1 && !tunnel.lining.empty())
        add_flat(all, "ledge at the firebox's end", 1, tunnel.lining.front(), tunnel.fire_width(),
                 tunnel.fire_height(), "less the tunnel's opening");
}

void add_riser(std::vector<Piece>& all, const Stove& stove, const Library& library) {
    const Riser& riser = stove.riser;
    const double height = riser.top - riser_stands_at(stove);
    if (!(riser.bore > 0))
        add_box(all, {"riser", riser.width, riser.depth, height}, riser.lining, library);
    else if (riser.octagonal)
        add_octagon(all, {"riser", riser.bore, riser.bore, height}, riser.lining, library);
    else
        add_tube(all, "riser", riser.bore, height, riser.lining, library);
}

void add_barrel(std::vector<Piece>& all, const Stove& stove, const Library& library) {
    if (!stove.barrel || !stove.plate) return;
    const Barrel& barrel = *stove.barrel;
    const double inside = barrel_inside(barrel);
    add_tube(all, "barrel", inside, barrel.height, barrel.shell, library);
    if (!barrel.shell.empty()) {
        const double across = 2 * riser_half_across(stove.riser, thickness(stove.riser.lining));
        all.push_back({"floor of the space round the riser", 1, barrel.shell.front().material,
                       barrel.shell.front().thickness, Piece::Form::ring, inside, across,
                       stove.riser.bore > 0 && !stove.riser.octagonal
                           ? ""
                           : "its hole has the riser's shape"});
    }
    add_tube(all, "barrel jacket", barrel.diameter, barrel.jacket_to - barrel.jacket_from,
             barrel.jacket, library);
    const Plate& plate = *stove.plate;
    all.push_back({"cooking plate", 1, plate.material, plate.thickness, Piece::Form::disc,
                   plate.diameter, 0, plate.clamped ? "bolted round its rim" : ""});
    if (plate.hole && plate.hole_cover)
        all.push_back({"cover in the plate's hole", 1, plate.material, *plate.hole_cover,
                       Piece::Form::disc, *plate.hole, 0, "loose, or it jams as it grows"});
    if (stove.bypass)
        add_tube(all, "bypass", stove.bypass->bore, bypass_length(stove), barrel.shell, library);
}

/// Pipes that the drawing needs and the file does not tell.
void add_connectors(std::vector<Piece>& all, const Stove& stove, const Library& library) {
    const FlueWay way = flue_way(stove);
    for (const LevelPipe& pipe : way.connect) {
        const std::size_t before = all.size();
        add_tube(all, pipe.name, pipe.bore, pipe.length(), *pipe.wall, library);
        for (std::size_t i = before; i < all.size(); ++i)
            all[i].note += std::string(all[i].note.empty() ? "" : "; ") +
                           "as drawn; the calculation leaves it out";
    }
}

}  // namespace

Stuff stuff_of(const Material& material) {
    const auto named = [&](const char* part) {
        return material.name.find(part) != std::string::npos;
    };
    if (named("glass") && !named("rope")) return Stuff::glass;
    if (named("blanket") || named("wool") || named("rope")) return Stuff::blanket;
    if (named("board") || named("silicate")) return Stuff::board;
    if (named("loose") || named("clay") || named("cob") || named("sand")) return Stuff::fill;
    if (named("brick")) return Stuff::brick;
    return material.density > 5000 ? Stuff::metal : Stuff::board;
}

double Piece::face() const {
    double one = 0;
    switch (form) {
        case Form::flat:
            one = a * b;
            break;
        case Form::disc:
            one = pi / 4 * a * a;
            break;
        case Form::ring:
            one = pi / 4 * (a * a - b * b);
            break;
        case Form::tube:
            one = pi * (a + thickness) * b;
            break;
    }
    return count * one;
}

std::vector<Piece> cut_list(const Stove& stove, const Library& library) {
    std::vector<Piece> all;
    add_feed(all, stove, library);
    add_tunnel(all, stove);
    add_riser(all, stove, library);
    add_barrel(all, stove, library);
    for (const Fitting& fitting : stove.fittings) add_fitting_pieces(all, fitting, stove, library);
    add_connectors(all, stove, library);
    for (const FlueSection& section : stove.flue.sections)
        add_tube(all, "flue, " + section.name, section.bore, section.length, section.wall, library);
    // An ugly stove may leave no room for one.
    std::erase_if(all, [](const Piece& piece) { return !(piece.face() > 0); });
    return all;
}

std::vector<Rope> ropes(const Stove& stove) {
    std::vector<Rope> all;
    if (stove.barrel && stove.plate && !stove.plate->clamped)
        all.push_back({"barrel's rim, under the plate", pi * stove.barrel->diameter});
    for (const Fitting& fitting : stove.fittings) {
        if (const auto* pane = std::get_if<Window>(&fitting))
            all.push_back({"round the pane, " + pane->name, 2 * (pane->width + pane->height)});
        if (const auto* oven = std::get_if<OvenTube>(&fitting))
            all.push_back({"oven tube's doors, " + oven->name, 2 * pi * oven->bore});
    }
    return all;
}

std::vector<Hole> holes(const Stove& stove) {
    std::vector<Hole> all;
    if (const auto door = doorway(stove); door && stove.tunnel)
        all.push_back({door->port ? "port" : "the tunnel's end",
                       "foot of the riser, towards the fire", 1, 0, door->width, door->height});
    else if (door)
        all.push_back({"port", "foot of the riser", 1, 0, door->width, door->height});
    for (const SideAir& air : stove.side_air) {
        std::string where = fmt::format("beside the fire, centre {:.0f} mm over the tunnel floor",
                                        air.height * 1000);
        if (air.duct_length > 0)
            where += fmt::format("; fed by a duct as large, {:.0f} mm long, from {}",
                                 air.duct_length * 1000, air.outdoors ? "outdoors" : "the room");
        if (air.holes > 0)
            all.push_back({"side air, " + air.name, where, air.holes, air.hole_diameter, 0, 0});
        else
            all.push_back({"side air, " + air.name, where, 1, 0, air.slot_width, air.slot_height});
    }
    if (stove.barrel) {
        const GasOutlet outlet = gas_outlet(stove);
        all.push_back(
            {outlet.name,
             "barrel, centre " + fmt::format("{:.0f} mm over its foot", stove.flue.outlet * 1000),
             1, outlet.outer, 0, 0});
    }
    if (stove.plate && stove.plate->hole)
        all.push_back({"cooking hole", "middle of the plate", 1, *stove.plate->hole, 0, 0});
    if (stove.bypass && stove.barrel)
        all.push_back({"bypass", "barrel, under the plate", 1,
                       stove.bypass->bore + 2 * thickness(stove.barrel->shell), 0, 0});
    for (const Fitting& fitting : stove.fittings) add_fitting_holes(all, fitting, stove);
    return all;
}

std::vector<Stock> stock_for(const std::vector<Piece>& pieces, const Library& library) {
    std::vector<Stock> all;
    for (const Piece& piece : pieces) {
        const auto same = [&](const Stock& stock) {
            return stock.material == piece.material &&
                   std::abs(stock.thickness - piece.thickness) < 1e-6;
        };
        auto found = std::find_if(all.begin(), all.end(), same);
        if (found == all.end())
            found = all.insert(all.end(), {piece.material, piece.thickness, 0, 0, 0});
        found->face += piece.face();
        found->volume += piece.volume();
        found->mass += piece.volume() * library.materials.at(piece.material).density;
    }
    return all;
}

}  // namespace drawwell

#include <utility>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/parts.h"
#include "models/laws/enclosure.h"
#include "models/laws/losses.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

/// The port and the bend into the riser, both at the tunnel's end.
void add_port(StoveBuilder& builder, double tunnel_area, GasPassageShape& shape) {
    const Stove& stove = builder.stove;
    const double into = riser_section(stove.riser).area;
    shape.losses.push_back(
        {.at_end = true, .area = into, .bend = mitre_bend_loss(constants::pi / 2)});
    // Without a port, the narrower of tunnel and riser is the opening between them.
    const double narrow = std::min(tunnel_area, into);
    const double area = stove.port ? stove.port->width * stove.port->height : narrow;
    const double before = std::min(1.0, area / tunnel_area), after = std::min(1.0, area / into);
    shape.losses.push_back({.at_end = true,
                            .area = area,
                            .forward = port_loss(before, after),
                            .reverse = port_loss(after, before),
                            .low_reynolds = stove.port ? low_reynolds_loss : 0.0,
                            .share_before = before,
                            .share_after = after});
    if (is_moved(stove.schedule.port, 1))
        shape.losses.back().open = builder.add_open_share(stove.schedule.port);
}

/// The wall behind the fire, under the feed: the fire and the wood see it.
void add_hearth_wall(StoveBuilder& builder, GasCellShape& first_cell) {
    const Stove& stove = builder.stove;
    if (!stove.feed || stove.feed->foot_lining.empty()) return;
    const double area =
        (stove.feed->width + stove.feed->depth) * stove.tunnel->height;  // back and half the sides
    const Wall wall = add_wall(builder, {.name = "feed.foot",
                                         .layers = stove.feed->foot_lining,
                                         .face_area = area,
                                         .temperature = stove.site.room,
                                         .held_face = {}});
    first_cell.faces.push_back({index(wall.face), area, wall.face_emissivity});
    builder.layout.hearth_wall.solids.push_back(wall.face);
    builder.layout.hearth_wall.position.push_back(stove.tunnel->height / 2);
    add_outer_face(builder, {.name = "feed foot",
                             .solids = {wall.back},
                             .area = {wall.back_area},
                             .emissivity = wall.back_emissivity,
                             .length = stove.tunnel->height});
}

}  // namespace

void add_tunnel(StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    if (!stove.tunnel) {
        builder.layout.riser_foot = builder.layout.hearth;
        return;
    }
    const Tunnel& tunnel = *stove.tunnel;
    builder.layout.riser_foot = builder.add_junction("riser foot");
    const DuctSection section = rectangular_section(tunnel.width, tunnel.height);
    const std::size_t count = builder.cells(4);
    const double length = tunnel.length / static_cast<double>(count);
    const double wall_area = (tunnel.width + 2 * tunnel.height) * length;
    const double roof_area = tunnel.width * length;

    GasPassageShape shape;
    shape.laminar_constant = section.laminar_constant;
    OuterFace sides{.name = "tunnel", .solids = {}, .area = {}, .length = tunnel.height};
    OuterFace roofs{.name = "tunnel roof",
                    .solids = {},
                    .area = {},
                    .facing = Facing::up,
                    .length = tunnel.width};
    for (std::size_t i = 0; i < count; ++i) {
        GasCellShape cell = duct_cell(section, length, 0);
        if (i == 0) add_hearth_wall(builder, cell);
        const std::string number = std::to_string(i);
        const Wall wall = add_wall(builder, {.name = "tunnel.wall." + number,
                                             .layers = tunnel.lining,
                                             .face_area = wall_area,
                                             .temperature = stove.site.room,
                                             .held_face = {}});
        const Wall roof = add_wall(builder, {.name = "tunnel.roof." + number,
                                             .layers = tunnel.roof,
                                             .face_area = roof_area,
                                             .temperature = stove.site.room,
                                             .held_face = {}});
        cell.faces.push_back({index(wall.face), wall_area, wall.face_emissivity});
        cell.faces.push_back({index(roof.face), roof_area, roof.face_emissivity});
        const double exchange =
            concentric_exchange(roof_area, wall_area, roof.face_emissivity, wall.face_emissivity);
        builder.network.enclosures.push_back({.name = "tunnel." + number,
                                              .patches = {{{roof.face, 1}}, {{wall.face, 1}}},
                                              .exchange_area = {0, exchange, exchange, 0}});
        shape.cells.push_back(std::move(cell));
        builder.layout.tunnel_wall.solids.push_back(wall.face);
        builder.layout.tunnel_roof.solids.push_back(roof.face);
        builder.layout.tunnel_wall.position.push_back((static_cast<double>(i) + 0.5) * length);
        sides.solids.push_back(wall.back);
        sides.area.push_back(wall.back_area);
        sides.emissivity = wall.back_emissivity;
        roofs.solids.push_back(roof.back);
        roofs.area.push_back(roof.back_area);
        roofs.emissivity = roof.back_emissivity;
    }
    add_port(builder, section.area, shape);
    add_outer_face(builder, std::move(sides));
    add_outer_face(builder, std::move(roofs));
    builder.layout.tunnel = builder.add_passage("tunnel", builder.layout.hearth,
                                                builder.layout.riser_foot, std::move(shape));
}

}  // namespace drawwell

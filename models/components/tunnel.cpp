#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

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
    const double height = stove.tunnel->fire_height();
    const double area =
        (stove.feed->width + stove.feed->depth) * height;  // back and half the sides
    const Wall wall = add_wall(builder, {.name = "feed.foot",
                                         .layers = stove.feed->foot_lining,
                                         .face_area = area,
                                         .temperature = stove.site.room,
                                         .held_face = {}});
    first_cell.faces.push_back({index(wall.face), area, wall.face_emissivity});
    builder.layout.hearth_wall.solids.push_back(wall.face);
    builder.layout.hearth_wall.position.push_back(height / 2);
    add_outer_face(builder, {.name = "feed foot",
                             .solids = {wall.back},
                             .area = {wall.back_area},
                             .emissivity = wall.back_emissivity,
                             .length = height});
}

/// A part of the tunnel of one section.
struct Stretch {
    DuctSection section;
    double width = 0, height = 0;  // [m]
    double cell = 0;               // [m] length of a cell
    std::size_t cells = 0;
};

/// The firebox, if it is larger than the rest, and the rest.
std::vector<Stretch> stretches_of(const StoveBuilder& builder) {
    const Tunnel& tunnel = *builder.stove.tunnel;
    const auto stretch = [&](double width, double height, double length) {
        const double usual = std::max(1.0, std::round(4 * length / tunnel.length));
        const std::size_t count = builder.cells(usual);
        return Stretch{rectangular_section(width, height), width, height,
                       length / static_cast<double>(count), count};
    };
    std::vector<Stretch> all;
    if (tunnel.firebox_length > 0)
        all.push_back(stretch(tunnel.fire_width(), tunnel.fire_height(), tunnel.firebox_length));
    all.push_back(stretch(tunnel.width, tunnel.height, tunnel.length - tunnel.firebox_length));
    return all;
}

/// Where the firebox ends, its gas narrows into the tunnel.
LocalLoss ledge(const DuctSection& firebox, const DuctSection& tunnel, std::size_t last_cell) {
    const double share = tunnel.area / firebox.area;
    return {.area = tunnel.area,
            .forward = sudden_contraction_loss(share),
            .reverse = sudden_expansion_loss(share),
            .low_reynolds = low_reynolds_loss,
            .after_cell = last_cell};
}

/// Adds the tunnel cell by cell: its walls, and the gas between them.
class TunnelCells {
  public:
    explicit TunnelCells(StoveBuilder& builder) : builder_(builder) {
        const Tunnel& tunnel = *builder.stove.tunnel;
        sides_.length = tunnel.height;
        roofs_.length = tunnel.width;
    }

    void add(const Stretch& stretch, GasPassageShape& shape) {
        const Stove& stove = builder_.stove;
        const double length = stretch.cell;
        const double wall_area = (stretch.width + 2 * stretch.height) * length;
        const double roof_area = stretch.width * length;
        GasCellShape cell = duct_cell(stretch.section, length, 0);
        cell.floor = stretch.width * std::clamp((stove.fire_front() - way_) / length, 0.0, 1.0);
        if (shape.cells.empty()) add_hearth_wall(builder_, cell);
        const std::string number = std::to_string(shape.cells.size());
        const Wall wall = add_wall(builder_, {.name = "tunnel.wall." + number,
                                              .layers = stove.tunnel->lining,
                                              .face_area = wall_area,
                                              .temperature = stove.site.room,
                                              .held_face = {}});
        const Wall roof = add_wall(builder_, {.name = "tunnel.roof." + number,
                                              .layers = stove.tunnel->roof,
                                              .face_area = roof_area,
                                              .temperature = stove.site.room,
                                              .held_face = {}});
        cell.faces.push_back({index(wall.face), wall_area, wall.face_emissivity});
        cell.faces.push_back({index(roof.face), roof_area, roof.face_emissivity});
        const double exchange =
            concentric_exchange(roof_area, wall_area, roof.face_emissivity, wall.face_emissivity);
        builder_.network.enclosures.push_back({.name = "tunnel." + number,
                                               .patches = {{{roof.face, 1}}, {{wall.face, 1}}},
                                               .exchange_area = {0, exchange, exchange, 0}});
        shape.cells.push_back(std::move(cell));
        Layout& layout = builder_.layout;
        layout.tunnel_wall.solids.push_back(wall.face);
        layout.tunnel_roof.solids.push_back(roof.face);
        layout.tunnel_wall.position.push_back(way_ + length / 2);
        way_ += length;
        note(sides_, wall);
        note(roofs_, roof);
    }

    void add_outer_faces() && {
        add_outer_face(builder_, std::move(sides_));
        add_outer_face(builder_, std::move(roofs_));
    }

  private:
    static void note(OuterFace& face, const Wall& wall) {
        face.solids.push_back(wall.back);
        face.area.push_back(wall.back_area);
        face.emissivity = wall.back_emissivity;
    }

    StoveBuilder& builder_;
    OuterFace sides_{.name = "tunnel", .solids = {}, .area = {}};
    OuterFace roofs_{.name = "tunnel roof", .solids = {}, .area = {}, .facing = Facing::up};
    double way_ = 0;  // [m] from the feed's centre
};

}  // namespace

void add_tunnel(StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    if (!stove.tunnel) {
        builder.layout.riser_foot = builder.layout.hearth;
        return;
    }
    builder.layout.riser_foot = builder.add_junction("riser foot");
    const std::vector<Stretch> stretches = stretches_of(builder);
    GasPassageShape shape;
    shape.laminar_constant = stretches.back().section.laminar_constant;
    shape.ash = builder.layout.ash_depth = builder.add_setting(stove.tunnel->ash);
    TunnelCells cells(builder);
    for (const Stretch& stretch : stretches)
        for (std::size_t i = 0; i < stretch.cells; ++i) cells.add(stretch, shape);
    if (stretches.size() > 1)
        shape.losses.push_back(ledge(stretches.front().section, stretches.back().section,
                                     stretches.front().cells - 1));
    add_port(builder, stretches.back().section.area, shape);
    std::move(cells).add_outer_faces();
    builder.layout.tunnel = builder.add_passage("tunnel", builder.layout.hearth,
                                                builder.layout.riser_foot, std::move(shape));
}

}  // namespace drawwell

#include <utility>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/parts.h"
#include "models/laws/losses.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

/// The share left open where a cover takes the rest.
Steps uncovered(const Steps& cover) {
    std::vector<double> open = cover.value();
    for (double& share : open) share = 1 - share;
    return {cover.time(), open};
}

}  // namespace

void add_feed(StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    const double axis = stove.axis_height();
    builder.layout.hearth = builder.add_junction("hearth");
    if (!stove.feed) {
        const JunctionId room = builder.add_room_air("room at the inlet", axis);
        const DuctSection riser = riser_section(stove.riser);
        GasPassageShape shape =
            stove.port && !stove.tunnel
                ? opening(stove.port->width * stove.port->height,
                          port_loss(0, stove.port->width * stove.port->height / riser.area))
                : opening(stove.tunnel ? stove.tunnel->fire_width() * stove.tunnel->fire_height()
                                       : riser.area,
                          entrance_loss());
        builder.layout.feed =
            builder.add_passage("inlet", room, builder.layout.hearth, std::move(shape), true);
        return;
    }

    const Feed& feed = *stove.feed;
    const JunctionId room = builder.add_room_air("room at the feed", feed.mouth);
    const DuctSection section = rectangular_section(feed.width, feed.depth);
    const double roof = stove.tunnel ? stove.tunnel->fire_height() : axis;
    const double drop = feed.mouth - axis, lined = feed.mouth - roof;

    GasPassageShape shape;
    shape.laminar_constant = section.laminar_constant;
    const std::size_t count = builder.cells(3);
    const double share = 1 / static_cast<double>(count);
    OuterFace outside{.name = "feed", .solids = {}, .area = {}, .length = lined};
    for (std::size_t i = 0; i < count; ++i) {
        GasCellShape cell = duct_cell(section, drop * share, -drop * share);
        const Wall wall = add_wall(builder, {.name = "feed.wall." + std::to_string(i),
                                             .layers = feed.lining,
                                             .face_area = section.perimeter * lined * share,
                                             .face_radius = section.equivalent_radius(),
                                             .temperature = stove.site.room,
                                             .held_face = {}});
        cell.faces.push_back(
            {index(wall.face), section.perimeter * lined * share, wall.face_emissivity});
        shape.cells.push_back(cell);
        builder.layout.feed_wall.solids.push_back(wall.face);
        outside.solids.push_back(wall.back);
        outside.area.push_back(wall.back_area);
        outside.emissivity = wall.back_emissivity;
    }
    // Mouth and turn into the tunnel, both past the standing wood, behind which the gas spreads.
    shape.free_area =
        builder.add_setting(section.area * (feed.free_share > 0 ? feed.free_share : 1));
    builder.layout.feed_free_area = shape.free_area;
    shape.losses.push_back({.area = 1,
                            .forward = entrance_loss(),
                            .reverse = exit_loss(),
                            .low_reynolds = low_reynolds_loss,
                            .follows_free_area = true,
                            .share_before = 0});
    if (is_moved(stove.schedule.feed_cover, 0))
        shape.losses.back().open = builder.layout.feed_open =
            builder.add_open_share(uncovered(stove.schedule.feed_cover));
    shape.losses.push_back({.at_end = true,
                            .area = 1,
                            .bend = mitre_bend_loss(constants::pi / 2),
                            .opens_into = section.area,
                            .follows_free_area = true});
    add_outer_face(builder, std::move(outside));
    builder.layout.feed =
        builder.add_passage("feed", room, builder.layout.hearth, std::move(shape), true);
}

}  // namespace drawwell

#include "models/components/fire_view.h"

#include <algorithm>
#include <cmath>

#include "models/components/duct_shape.h"
#include "models/laws/enclosure.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

/// The fire's box below the feed, along the tunnel from the feed's centre [m].
struct FireBox {
    double width = 0, height = 0;
    double back = 0, front = 0;

    double end_area() const { return width * height; }
    double depth() const { return front - back; }
    double area() const { return 2 * (end_area() + depth() * (width + height)); }
};

FireBox fire_box(const Stove& stove) {
    const Tunnel& tunnel = *stove.tunnel;
    const double depth = stove.fire_depth();
    const double back = stove.feed ? -depth / 2 : 0;
    return {.width = tunnel.fire_width(),
            .height = tunnel.fire_height(),
            .back = back,
            .front = stove.fire_front()};
}

/// The cells of the tunnel beside the box, and those ahead of it.
void add_tunnel_view(FireView& view, const StoveBuilder& builder, const FireBox& box,
                     double roofed) {
    const Layout& layout = builder.layout;
    const auto& walls = layout.tunnel_wall.solids;
    const Stove& stove = builder.stove;
    const Tunnel& tunnel = *stove.tunnel;
    const std::vector<double> ends = layout.tunnel_wall.ends(0);
    // Of what lies ahead a ledge leaves the tunnel's section open.
    const double open = std::min(1.0, tunnel.width * tunnel.height / box.end_area());
    const double beside = (box.width + 2 * box.height) / box.area(),
                 above = box.width * roofed / box.area(),
                 ahead = open * box.end_area() / box.area();
    std::size_t at_ledge = 0;
    while (at_ledge + 1 < walls.size() && ends[at_ledge + 1] < tunnel.firebox_length - 1e-9)
        ++at_ledge;
    view.add(index(walls[at_ledge]), (1 - open) * box.end_area() / box.area());
    const auto seen_until = [&](double end) {
        return 1 - parallel_rectangles(box.width, box.height, std::max(end - box.front, 0.0));
    };
    const auto roof_until = [&](double end) {
        return perpendicular_rectangles(box.width, box.height, std::max(end - box.front, 0.0));
    };
    for (std::size_t i = 0; i < walls.size(); ++i) {
        const double along = std::max(std::min(ends[i + 1], box.front) - ends[i], 0.0);
        const double roof = ahead * (roof_until(ends[i + 1]) - roof_until(ends[i]));
        const double all = ahead * (seen_until(ends[i + 1]) - seen_until(ends[i]));
        view.add(index(walls[i]), along * beside + all - roof);
        view.add(index(layout.tunnel_roof.solids[i]), along * above + roof);
    }
    // Under the feed behind the first cell: floor, and roof beside a narrower feed.
    const double behind = std::max(-box.back, 0.0);
    view.add(index(walls.front()), behind * box.width / box.area());
    view.add(index(layout.tunnel_roof.solids.front()), behind * above);

    const double end = ahead * (1 - seen_until(ends.back()));
    const double port =
        stove.port
            ? std::min(1.0, stove.port->width * stove.port->height / (tunnel.width * tunnel.height))
            : 1;
    view.add(index(layout.riser_inside.solids.front()), end * port);
    view.add(index(walls.back()), end * (1 - port));
}

/// Up the feed, whose cells run from its mouth down to the tunnel's roof.
void add_feed_view(FireView& view, const StoveBuilder& builder, double share) {
    const Feed& feed = *builder.stove.feed;
    const auto& walls = builder.layout.feed_wall.solids;
    const double lined = feed.mouth - builder.stove.tunnel->fire_height();
    const double cell = lined / static_cast<double>(walls.size());
    double reached = 1;
    for (std::size_t i = walls.size(); i-- > 0;) {
        const double further = parallel_rectangles(feed.width, feed.depth,
                                                   static_cast<double>(walls.size() - i) * cell);
        view.add(index(walls[i]), share * (reached - further));
        reached = further;
    }
}

/// The view with panes in place of the parts of walls that they stand for.
FireView through_panes(const FireView& view, std::span<const Pane> panes) {
    FireView with_panes;
    for (const auto& [solid, seen] : view.faces()) {
        double left = seen;
        for (const Pane& pane : panes)
            if (index(pane.wall) == solid) {
                with_panes.add(index(pane.glass), left * pane.share);
                left *= 1 - pane.share;
            }
        with_panes.add(solid, left);
    }
    return with_panes;
}

}  // namespace

FireView bore_view(const SolidRow& wall, double foot, double radius) {
    FireView view;
    const std::vector<double> ends = wall.ends(foot);
    double reached = 1;
    for (std::size_t i = 0; i < wall.solids.size(); ++i) {
        const double further = coaxial_discs(radius, radius, ends[i + 1] - foot);
        view.add(index(wall.solids[i]), reached - further);
        reached = further;
    }
    return view;
}

void add_rings_above(FireView& view, const RingsAbove& above, double length, double radius) {
    const double far = length + above.distance;
    // No ray from the fire meets the plate beyond this; the outermost ring takes what would.
    const double widest =
        std::max(radius, std::min(radius * (1 + 2 * above.distance / length), above.edge.back()));
    const double through = coaxial_discs(radius, radius, length),
                 within = coaxial_discs(radius, radius, far);
    const auto until = [&](double edge) {
        if (edge <= 0) return 0.0;
        if (edge <= radius) return coaxial_discs(radius, edge, far);
        const double reach = std::min(edge, widest);
        const double span = widest * widest - radius * radius;
        const double part = span > 0 ? (reach * reach - radius * radius) / span : 1;
        return within + part * (through - within);
    };
    for (std::size_t i = 0; i < above.rings.size(); ++i)
        view.add(index(above.rings[i]), until(above.edge[i + 1]) - until(above.edge[i]));
}

FireView riser_view(const StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    const Layout& layout = builder.layout;
    const Riser& riser = stove.riser;
    const double foot = stove.axis_height();
    // A riser that is not round counts as a bore of its area: our choice.
    const double radius = riser_section(riser).equal_bore() / 2;
    FireView view = bore_view(layout.riser_inside, foot, radius);
    if (!layout.plate.solids.empty())
        add_rings_above(view,
                        {.rings = layout.plate.solids,
                         .edge = layout.plate_edge,
                         .distance = stove.plate->underside - riser.top},
                        riser.top - foot, radius);
    return view;
}

FireView hearth_view(const StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    const Layout& layout = builder.layout;
    const FireBox box = fire_box(stove);
    FireView view;
    const double opening = stove.feed ? std::min(1.0, stove.feed->width / box.width) : 0;
    if (stove.feed) {
        // Back, and the half of the sides that stands behind the feed's centre.
        const SolidId behind = layout.hearth_wall.solids.empty()
                                   ? layout.tunnel_wall.solids.front()
                                   : layout.hearth_wall.solids.front();
        view.add(index(behind), (box.end_area() - 2 * box.back * box.height) / box.area());
        add_feed_view(view, builder, opening * box.depth() * box.width / box.area());
    }
    add_tunnel_view(view, builder, box, 1 - opening);
    return through_panes(view, layout.panes);
}

}  // namespace drawwell

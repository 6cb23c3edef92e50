#include "models/components/fire_view.h"

#include <algorithm>
#include <cmath>

#include "models/components/duct_shape.h"
#include "models/laws/enclosure.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

/// Ends of the cells of a row that begins at `from`, told by the middles between them.
std::vector<double> ends_of(const SolidRow& row, double from) {
    std::vector<double> ends{from};
    for (const double middle : row.position) ends.push_back(2 * middle - ends.back());
    return ends;
}

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
    // Without a feed the fire lies at the tunnel's mouth, as deep as it is wide: our choice.
    const double depth = stove.feed ? stove.feed->depth : tunnel.width;
    const double back = stove.feed ? -depth / 2 : 0;
    return {.width = tunnel.width,
            .height = tunnel.height,
            .back = back,
            .front = std::min(back + depth, tunnel.length)};
}

/// The cells of the tunnel beside the box, and those ahead of it.
void add_tunnel_view(FireView& view, const StoveBuilder& builder, const FireBox& box,
                     double roofed) {
    const Layout& layout = builder.layout;
    const auto& walls = layout.tunnel_wall.solids;
    const std::vector<double> ends = ends_of(layout.tunnel_wall, 0);
    const double beside = (box.width + 2 * box.height) / box.area(),
                 above = box.width * roofed / box.area(), ahead = box.end_area() / box.area();
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

    const Stove& stove = builder.stove;
    const double end = ahead * (1 - seen_until(ends.back()));
    const double port =
        stove.port ? std::min(1.0, stove.port->width * stove.port->height / box.end_area()) : 1;
    view.add(index(layout.riser_inside.solids.front()), end * port);
    view.add(index(walls.back()), end * (1 - port));
}

/// Up the feed, whose cells run from its mouth down to the tunnel's roof.
void add_feed_view(FireView& view, const StoveBuilder& builder, double share) {
    const Feed& feed = *builder.stove.feed;
    const auto& walls = builder.layout.feed_wall.solids;
    const double lined = feed.mouth - builder.stove.tunnel->height;
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
    const std::vector<double> ends = ends_of(wall, foot);
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

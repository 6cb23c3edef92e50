#include "cli/report/sheet/fitting_pieces.h"

#include <fmt/format.h>

#include "cli/report/section/geometry.h"
#include "cli/report/sheet/wall_pieces.h"

namespace drawwell {
namespace {

struct PiecesOf {
    std::vector<Piece>& all;
    const Stove& stove;
    const Library& library;

    void operator()(const Pot&) const {}
    void operator()(const Damp&) const {}
    void operator()(const Griddle& griddle) const {
        all.push_back({"griddle, " + griddle.name, 1, griddle.material, griddle.thickness,
                       Piece::Form::disc, griddle.diameter, 0, ""});
    }
    void operator()(const OvenTube& oven) const {
        if (!stove.barrel || oven.wall.empty()) return;
        add_tube(all, "oven tube, " + oven.name, oven.bore, oven_length(stove), oven.wall, library);
        all.push_back({"its doors", 2, oven.wall.front().material, oven.wall.front().thickness,
                       Piece::Form::disc, oven.bore + 2 * thickness(oven.wall), 0, ""});
    }
    void operator()(const Window& pane) const {
        all.push_back({"pane, " + pane.name, 1, "ceramic_glass", pane.thickness, Piece::Form::flat,
                       pane.width, pane.height, "in view; add what its frame holds, with play"});
    }
    void operator()(const Grid& grid) const {
        if (!stove.tunnel) return;
        all.push_back({"grid of wire, " + grid.name, 1, "stainless_304", grid.wire,
                       Piece::Form::flat, stove.tunnel->fire_width(), stove.tunnel->fire_height(),
                       fmt::format("wires {:.1f} mm apart; the mass is that of a full sheet",
                                   grid.pitch * 1000)});
    }
    void operator()(const AirChannel& channel) const {
        all.push_back({"air channel, " + channel.name, 1, "mild_steel", 0.001, Piece::Form::flat,
                       channel.width + 2 * channel.height, channel.length,
                       "folded to a trough; 1 mm is common, the calculation asks for none"});
    }
    void operator()(const Bell& bell) const {
        if (bell.diameter > 0)
            add_tube(all, "bell, " + bell.name, bell.diameter, bell.height, bell.wall, library);
        else
            add_box(all, {"bell, " + bell.name, bell.width, bell.depth, bell.height}, bell.wall,
                    library);
        for (const Band& band : bands(bell.wall))
            if (bell.diameter > 0)
                all.push_back({"its top", 1, band.layer->material, band.layer->thickness,
                               Piece::Form::disc, bell.diameter + 2 * band.to, 0, ""});
            else
                add_flat(all, "its top", 1, *band.layer, bell.width + 2 * band.to,
                         bell.depth + 2 * band.to);
    }
};

struct HolesOf {
    std::vector<Hole>& all;
    const Stove& stove;

    void operator()(const Pot&) const {}
    void operator()(const Damp&) const {}
    void operator()(const Griddle&) const {}
    void operator()(const Grid&) const {}
    void operator()(const OvenTube& oven) const {
        all.push_back({"oven tube, " + oven.name,
                       fmt::format("barrel, both sides, axis {:.0f} mm over the tunnel floor",
                                   oven.height * 1000),
                       2, oven.bore + 2 * thickness(oven.wall), 0, 0});
    }
    void operator()(const Window& pane) const {
        all.push_back({"window, " + pane.name, "tunnel's side, from the feed's centre on", 1, 0,
                       pane.width, pane.height});
    }
    void operator()(const AirChannel& channel) const {
        all.push_back({"air channel, " + channel.name, "into the hearth", 1, 0, channel.width,
                       channel.height});
    }
    void operator()(const Bell& bell) const {
        const double wall = 2 * thickness(connector_wall(stove));
        all.push_back({"into the bell, " + bell.name,
                       fmt::format("its side, centre {:.0f} mm over its floor", bell.inlet * 1000),
                       1, bell.opening + wall, 0, 0});
        const Bell* next = bell_after(bell);
        all.push_back({"out of the bell, " + bell.name,
                       fmt::format("its side, centre {:.0f} mm over its floor", bell.outlet * 1000),
                       1, next ? next->opening + wall : outer_diameter(stove.flue.sections.front()),
                       0, 0});
    }

    const Bell* bell_after(const Bell& bell) const {
        bool passed = false;
        for (const Fitting& fitting : stove.fittings)
            if (const auto* other = std::get_if<Bell>(&fitting)) {
                if (passed) return other;
                passed = other->name == bell.name;
            }
        return nullptr;
    }
};

}  // namespace

void add_fitting_pieces(std::vector<Piece>& all, const Fitting& fitting, const Stove& stove,
                        const Library& library) {
    std::visit(PiecesOf{all, stove, library}, fitting);
}

void add_fitting_holes(std::vector<Hole>& all, const Fitting& fitting, const Stove& stove) {
    std::visit(HolesOf{all, stove}, fitting);
}

}  // namespace drawwell

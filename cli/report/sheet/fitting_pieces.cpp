#include "cli/report/sheet/fitting_pieces.h"

#include <fmt/format.h>

#include "cli/report/section/geometry.h"
#include "cli/report/sheet/wall_pieces.h"
#include "models/components/duct_shape.h"

namespace drawwell {
namespace {

/// As the calculation has it: through the middle of the space round the riser.
double tube_length(const Stove& stove) {
    const double skin =
        riser_section(stove.riser).equivalent_radius() + thickness(stove.riser.lining);
    return oven_tube_length(skin, barrel_inside(*stove.barrel) / 2);
}

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
        add_tube(all, "oven tube, " + oven.name, oven.bore, tube_length(stove), oven.wall, library);
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
        all.push_back({"into the bell, " + bell.name,
                       fmt::format("its side, centre {:.0f} mm over its floor", bell.inlet * 1000),
                       1, bell.opening, 0, 0});
        if (!stove.flue.sections.empty())
            all.push_back(
                {"out of the bell, " + bell.name,
                 fmt::format("its side, centre {:.0f} mm over its floor", bell.outlet * 1000), 1,
                 outer_diameter(stove.flue.sections.front()), 0, 0});
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

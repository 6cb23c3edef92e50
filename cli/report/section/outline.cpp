#include "cli/report/section/outline.h"

#include <algorithm>

#include "cli/report/section/geometry.h"

namespace drawwell {
namespace {

class Outline {
  public:
    explicit Outline(const Stove& stove) : stove_(stove), axis_(riser_axis(stove)) {
        barrel();
        flue();
        tunnel();
        feed();
        riser();
        plate();
    }

    std::vector<CutBlock> blocks;

  private:
    void add(CutPart part, std::string_view material, double x1, double y1, double x2, double y2,
             bool inmost = true) {
        if (x2 > x1 && y2 > y1) blocks.push_back({part, material, x1, y1, x2, y2, inmost});
    }
    void wall(CutPart part, const Band& band, double x1, double y1, double x2, double y2) {
        add(part, band.layer->material, x1, y1, x2, y2, !(band.from > 0));
    }
    /// A wall's layers on both sides of the riser's axis, its gas face so far from it.
    void both_sides(CutPart part, const BuildUp& layers, double inside, double low, double high) {
        for (const Band& band : bands(layers)) {
            wall(part, band, axis_ - inside - band.to, low, axis_ - inside - band.from, high);
            wall(part, band, axis_ + inside + band.from, low, axis_ + inside + band.to, high);
        }
    }

    void feed() {
        if (!stove_.feed) return;
        const Feed& feed = *stove_.feed;
        const double half = feed.depth / 2, foot = feed_foot(stove_);
        add(CutPart::feed_gas, "", -half, foot, half, feed.mouth);
        for (const Band& band : bands(feed.lining)) {
            wall(CutPart::feed_wall, band, -half - band.to, foot, -half - band.from, feed.mouth);
            wall(CutPart::feed_wall, band, half + band.from, foot, half + band.to, feed.mouth);
        }
        for (const Band& band : bands(feed.foot_lining))
            wall(CutPart::feed_wall, band, -half - band.to, 0, -half - band.from, foot);
    }

    void tunnel() {
        if (!stove_.tunnel) return;
        const Tunnel& tunnel = *stove_.tunnel;
        for (const Band& band : bands(tunnel.lining))
            wall(CutPart::tunnel_floor, band, back_end(stove_), -band.to, riser_end(stove_),
                 -band.from);
        const std::vector<TunnelStretch> stretches = tunnel_stretches(stove_);
        for (const TunnelStretch& part : stretches) {
            add(CutPart::tunnel_gas, "", part.from, 0, part.to, part.height);
            for (const Band& band : bands(tunnel.roof))
                wall(CutPart::tunnel_roof, band, std::max(part.from, roof_start(stove_)),
                     part.height + band.from, part.to, part.height + band.to);
        }
        if (stretches.size() > 1 && !tunnel.lining.empty()) {
            const Layer& ledge = tunnel.lining.front();
            add(CutPart::tunnel_roof, ledge.material, stretches[1].from, tunnel.height,
                std::min(stretches[1].from + ledge.thickness, stretches[1].to),
                tunnel.fire_height());
        }
    }

    void riser() {
        const Riser& riser = stove_.riser;
        const double stands = riser_stands_at(stove_);
        const auto door = doorway(stove_);
        const double over_door = std::min(stands + (door ? door->height : 0), riser.top);
        const double half = riser_half_along(riser, 0);
        add(CutPart::riser_gas, "", axis_ - half, stands, axis_ + half, riser.top);
        for (const Band& band : bands(riser.lining)) {
            if (door)
                add(CutPart::doorway, "", axis_ - half - band.to, stands, axis_ - half - band.from,
                    over_door);
            wall(CutPart::riser_wall, band, axis_ - half - band.to, over_door,
                 axis_ - half - band.from, riser.top);
            wall(CutPart::riser_wall, band, axis_ + half + band.from, stands,
                 axis_ + half + band.to, riser.top);
        }
    }

    void barrel() {
        if (!stove_.barrel || !stove_.plate) return;
        const Barrel& barrel = *stove_.barrel;
        const double foot = stove_.barrel_foot(), top = stove_.plate->underside;
        const double inside = barrel_inside(barrel) / 2;
        const double turn = std::clamp(stove_.riser.top, foot, top);
        add(CutPart::space_round_riser, "", axis_ - inside, foot, axis_ + inside, turn);
        add(CutPart::under_plate, "", axis_ - inside, turn, axis_ + inside, top);
        both_sides(CutPart::barrel_wall, barrel.shell, inside, foot, top);
        both_sides(CutPart::jacket, barrel.jacket, barrel.diameter / 2, barrel.jacket_from,
                   barrel.jacket_to);
        if (barrel.shell.empty()) return;
        const Layer& sheet = barrel.shell.front();
        const double outside = riser_half_along(stove_.riser, thickness(stove_.riser.lining));
        const auto ring = [&](double x1, double x2) {
            add(CutPart::barrel_ring, sheet.material, x1, foot, x2, foot + sheet.thickness);
        };
        ring(axis_ - inside, axis_ - outside);
        ring(axis_ + outside, axis_ + inside);
    }

    void plate() {
        if (!stove_.plate || !stove_.barrel) return;
        const Plate& plate = *stove_.plate;
        const double under = plate.underside, over = under + plate.thickness;
        const double half = plate.diameter / 2, hole = plate.hole.value_or(0) / 2;
        if (!(hole > 0)) {
            add(CutPart::plate, plate.material, axis_ - half, under, axis_ + half, over);
            return;
        }
        add(CutPart::plate, plate.material, axis_ - half, under, axis_ - hole, over);
        add(CutPart::plate, plate.material, axis_ + hole, under, axis_ + half, over);
        if (plate.hole_cover)
            add(CutPart::plate_cover, plate.material, axis_ - hole, under, axis_ + hole,
                under + *plate.hole_cover);
    }

    void flue() {
        const GasOutlet outlet = gas_outlet(stove_);
        const double half = outlet.bore / 2, height = stove_.outlet_height();
        if (!stove_.barrel) {
            if (!outlet.flue) return;  // open, or beside it the bell
            const double top = height + outlet.shown;
            add(CutPart::flue_gas, "", axis_ - half, height, axis_ + half, top);
            both_sides(CutPart::flue_wall, *outlet.wall, half, height, top);
            return;
        }
        // Through the shell, on the side away from the feed; where it really goes is the builder's.
        const double from = axis_ + barrel_inside(*stove_.barrel) / 2;
        const double shell = axis_ + stove_.barrel->diameter / 2;
        const double to = shell + (outlet.wall ? outlet.shown : 0);
        add(CutPart::flue_gas, "", from, height - half, to, height + half);
        if (!outlet.wall) return;
        for (const Band& band : bands(*outlet.wall)) {
            wall(CutPart::flue_wall, band, from, height + half + band.from, to,
                 height + half + band.to);
            wall(CutPart::flue_wall, band, from, height - half - band.to, to,
                 height - half - band.from);
        }
    }

    const Stove& stove_;
    double axis_;
};

}  // namespace

std::vector<CutBlock> cut_outline(const Stove& stove) {
    return Outline(stove).blocks;
}

}  // namespace drawwell

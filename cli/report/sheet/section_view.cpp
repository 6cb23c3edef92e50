#include "cli/report/sheet/section_view.h"

#include <algorithm>

#include "cli/report/sheet/gas_line.h"
#include "cli/report/sheet/geometry.h"
#include "cli/report/sheet/section_fittings.h"

namespace drawwell {
namespace {

class Section {
  public:
    Section(PaperPage& page, const View& view, const Stove& stove, const Library& library)
        : page_(page), view_(view), stove_(stove), library_(library), axis_(riser_axis(stove)) {}

    void draw() const {
        barrel();
        flue();
        tunnel();
        feed();
        riser();
        plate();
    }

  private:
    void wall(const Layer& layer, double x1, double y1, double x2, double y2) const {
        view_.block(page_, stuff_of(library_.materials.at(layer.material)), x1, y1, x2, y2);
    }

    void feed() const {
        if (!stove_.feed) return;
        const Feed& feed = *stove_.feed;
        const double half = feed.depth / 2, foot = feed_foot(stove_);
        view_.hollow(page_, -half, foot, half, feed.mouth);
        for (const Band& band : bands(feed.lining)) {
            wall(*band.layer, -half - band.to, foot, -half - band.from, feed.mouth);
            wall(*band.layer, half + band.from, foot, half + band.to, feed.mouth);
        }
        for (const Band& band : bands(feed.foot_lining))
            wall(*band.layer, -half - band.to, 0, -half - band.from, foot);
    }

    void tunnel() const {
        if (!stove_.tunnel) return;
        const Tunnel& tunnel = *stove_.tunnel;
        for (const Band& band : bands(tunnel.lining))
            wall(*band.layer, back_end(stove_), -band.to, riser_end(stove_), -band.from);
        const std::vector<TunnelStretch> stretches = tunnel_stretches(stove_);
        for (const TunnelStretch& part : stretches) {
            view_.hollow(page_, part.from, 0, part.to, part.height);
            for (const Band& band : bands(tunnel.roof))
                wall(*band.layer, std::max(part.from, roof_start(stove_)), part.height + band.from,
                     part.to, part.height + band.to);
        }
        if (stretches.size() > 1 && !tunnel.lining.empty())
            wall(tunnel.lining.front(), stretches[1].from, tunnel.height,
                 std::min(stretches[1].from + tunnel.lining.front().thickness, stretches[1].to),
                 tunnel.fire_height());
    }

    void riser() const {
        const Riser& riser = stove_.riser;
        const double stands = riser_stands_at(stove_);
        const auto door = doorway(stove_);
        const double over_door = std::min(stands + (door ? door->height : 0), riser.top);
        const double half = riser_half_along(riser, 0);
        view_.hollow(page_, axis_ - half, stands, axis_ + half, riser.top);
        for (const Band& band : bands(riser.lining)) {
            if (door)
                view_.hollow(page_, axis_ - half - band.to, stands, axis_ - half - band.from,
                             over_door);
            wall(*band.layer, axis_ - half - band.to, over_door, axis_ - half - band.from,
                 riser.top);
            wall(*band.layer, axis_ + half + band.from, stands, axis_ + half + band.to, riser.top);
        }
    }

    void barrel() const {
        if (!stove_.barrel || !stove_.plate) return;
        const Barrel& barrel = *stove_.barrel;
        const double foot = stove_.barrel_foot(), top = stove_.plate->underside;
        const double inside = barrel_inside(barrel) / 2;
        view_.hollow(page_, axis_ - inside, foot, axis_ + inside, top);
        for (const Band& band : bands(barrel.shell)) {
            wall(*band.layer, axis_ - inside - band.to, foot, axis_ - inside - band.from, top);
            wall(*band.layer, axis_ + inside + band.from, foot, axis_ + inside + band.to, top);
        }
        for (const Band& band : bands(barrel.jacket)) {
            const double from = barrel.diameter / 2 + band.from, to = barrel.diameter / 2 + band.to;
            wall(*band.layer, axis_ - to, barrel.jacket_from, axis_ - from, barrel.jacket_to);
            wall(*band.layer, axis_ + from, barrel.jacket_from, axis_ + to, barrel.jacket_to);
        }
        if (barrel.shell.empty()) return;
        const Layer& sheet = barrel.shell.front();
        const double outside = riser_half_along(stove_.riser, thickness(stove_.riser.lining));
        wall(sheet, axis_ - inside, foot, axis_ - outside, foot + sheet.thickness);
        wall(sheet, axis_ + outside, foot, axis_ + inside, foot + sheet.thickness);
    }

    void plate() const {
        if (!stove_.plate || !stove_.barrel) return;
        const Plate& plate = *stove_.plate;
        const double under = plate.underside, over = under + plate.thickness;
        const double half = plate.diameter / 2, hole = plate.hole.value_or(0) / 2;
        const Layer metal{plate.material, plate.thickness};
        if (hole > 0) {
            wall(metal, axis_ - half, under, axis_ - hole, over);
            wall(metal, axis_ + hole, under, axis_ + half, over);
            if (plate.hole_cover)
                wall(metal, axis_ - hole, under, axis_ + hole, under + *plate.hole_cover);
        } else {
            wall(metal, axis_ - half, under, axis_ + half, over);
        }
    }

    void flue() const {
        if (stove_.flue.sections.empty()) return;
        const FlueSection& first = stove_.flue.sections.front();
        const double half = first.bore / 2, height = stove_.outlet_height();
        if (!stove_.barrel) {
            const double top = height + flue_stub(stove_);
            view_.hollow(page_, axis_ - half, height, axis_ + half, top);
            for (const Band& band : bands(first.wall)) {
                wall(*band.layer, axis_ - half - band.to, height, axis_ - half - band.from, top);
                wall(*band.layer, axis_ + half + band.from, height, axis_ + half + band.to, top);
            }
            return;
        }
        // Through the shell, on the side away from the feed; where it really goes is the builder's.
        const double from = axis_ + barrel_inside(*stove_.barrel) / 2;
        const double to = axis_ + stove_.barrel->diameter / 2 + flue_stub(stove_);
        view_.hollow(page_, from, height - half, to, height + half);
        for (const Band& band : bands(first.wall)) {
            wall(*band.layer, from, height + half + band.from, to, height + half + band.to);
            wall(*band.layer, from, height - half - band.to, to, height - half - band.from);
        }
    }

    PaperPage& page_;
    const View& view_;
    const Stove& stove_;
    const Library& library_;
    double axis_;
};

}  // namespace

void draw_section(PaperPage& page, const View& view, const Stove& stove, const Library& library) {
    Section(page, view, stove, library).draw();
    draw_section_fittings(page, view, stove);
    draw_gas_line(page, view, stove);
}

}  // namespace drawwell

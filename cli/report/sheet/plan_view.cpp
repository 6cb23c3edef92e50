#include "cli/report/sheet/plan_view.h"

#include <algorithm>

#include "cli/report/section/geometry.h"
#include "models/components/duct_shape.h"

namespace drawwell {
namespace {

PaperLine ring(const View& view, const Stove& stove, double wall, Pen pen, std::string fill) {
    PaperLine line{{}, pen, true, std::move(fill)};
    const double axis = riser_axis(stove);
    for (const FlatPoint& point : riser_outline(stove.riser, wall))
        line.points.push_back(view.at(axis + point.x, point.y));
    return line;
}

class Plan {
  public:
    Plan(PaperPage& page, const View& view, const Stove& stove, const Library& library)
        : page_(page), view_(view), stove_(stove), library_(library) {}

    void tunnel() const {
        if (!stove_.tunnel) return;
        for (const TunnelStretch& part : tunnel_stretches(stove_)) {
            const double half = part.width / 2;
            view_.hollow(page_, part.from, -half, part.to, half);
            for (const Band& band : bands(stove_.tunnel->lining))
                both_sides(*band.layer, std::max(part.from, 0.0), part.to, half + band.from,
                           half + band.to);
        }
        if (!stove_.feed) return;
        const double half = stove_.feed->width / 2, back = back_wall(stove_);
        view_.hollow(page_, back, -half, 0, half);
        for (const Band& band : bands(stove_.feed->foot_lining)) {
            wall(*band.layer, back - band.to, -half - band.from, back - band.from,
                 half + band.from);
            both_sides(*band.layer, back - band.to, 0, half + band.from, half + band.to);
        }
        view_.frame(page_, Pen::hidden, back, -half, -back, half);
    }

    void riser() const {
        const std::vector<Band> layers = bands(stove_.riser.lining);
        for (std::size_t i = layers.size(); i-- > 0;)
            page_.lines.push_back(
                ring(view_, stove_, layers[i].to, Pen::outline, tint(stuff(*layers[i].layer))));
        page_.lines.push_back(ring(view_, stove_, 0, Pen::outline, gas_tint));
        const auto door = doorway(stove_);
        if (!door || !stove_.tunnel) return;
        const double half = std::min(door->width / 2, riser_half_across(stove_.riser, 0));
        const double wall = thickness(stove_.riser.lining);
        const double axis = riser_axis(stove_);
        view_.hollow(page_, axis - riser_half_along(stove_.riser, wall), -half,
                     axis - riser_half_along(stove_.riser, 0) / 2, half);
    }

    void over_it() const {
        if (!stove_.barrel || !stove_.plate) return;
        const PaperPoint centre = view_.at(riser_axis(stove_), 0);
        const auto round = [&](double diameter) {
            page_.lines.push_back({circle(centre, view_.length(diameter / 2)), Pen::hidden, true});
        };
        round(barrel_inside(*stove_.barrel));
        round(stove_.barrel->diameter);
        round(stove_.plate->diameter);
        if (stove_.plate->hole) round(*stove_.plate->hole);
        for (const Fitting& fitting : stove_.fittings) {
            const auto* oven = std::get_if<OvenTube>(&fitting);
            if (!oven) continue;
            const double skin =
                riser_section(stove_.riser).equivalent_radius() + thickness(stove_.riser.lining);
            const double barrel = barrel_inside(*stove_.barrel) / 2;
            const double half = oven_length(stove_) / 2;
            const double outer = oven->bore / 2 + thickness(oven->wall);
            const double axis = riser_axis(stove_), beside = (skin + barrel) / 2;
            view_.frame(page_, Pen::hidden, axis - half, -beside - outer, axis + half,
                        -beside + outer);
        }
    }

  private:
    Stuff stuff(const Layer& layer) const {
        return stuff_of(library_.materials.at(layer.material));
    }
    void wall(const Layer& layer, double x1, double y1, double x2, double y2) const {
        view_.block(page_, stuff(layer), x1, y1, x2, y2);
    }
    void both_sides(const Layer& layer, double x1, double x2, double y1, double y2) const {
        wall(layer, x1, y1, x2, y2);
        wall(layer, x1, -y2, x2, -y1);
    }

    PaperPage& page_;
    const View& view_;
    const Stove& stove_;
    const Library& library_;
};

}  // namespace

Extent plan_extent(const Stove& stove) {
    const double axis = riser_axis(stove), wall = thickness(stove.riser.lining);
    Extent all{axis, axis, 0, 0};
    const auto about = [&](double x1, double x2, double half) {
        all.take(x1, -half);
        all.take(x2, half);
    };
    about(axis - riser_half_along(stove.riser, wall), riser_end(stove),
          riser_half_across(stove.riser, wall));
    if (stove.feed)
        about(back_end(stove), -back_wall(stove),
              stove.feed->width / 2 + thickness(stove.feed->foot_lining));
    if (stove.tunnel)
        about(0, axis,
              std::max(stove.tunnel->width, stove.tunnel->fire_width()) / 2 +
                  thickness(stove.tunnel->lining));
    if (stove.barrel && stove.plate) {
        const double half = std::max(stove.barrel->diameter, stove.plate->diameter) / 2;
        about(axis - half, axis + half, half);
    }
    return all;
}

void draw_plan(PaperPage& page, const View& view, const Stove& stove, const Library& library) {
    const Plan plan(page, view, stove, library);
    plan.tunnel();
    plan.riser();
    plan.over_it();
}

std::vector<Span> plan_widths(const Stove& stove) {
    std::vector<Span> spans;
    const double axis = riser_axis(stove), wall = thickness(stove.riser.lining);
    const auto add = [&](const char* name, double width, double along) {
        spans.push_back({name, -width / 2, width / 2, along});
    };
    if (stove.port) add("port, width", stove.port->width, axis);
    if (stove.feed) add("feed, inside", stove.feed->width, stove.feed->depth / 2);
    if (stove.tunnel) {
        if (stove.tunnel->firebox_length > 0)
            add("firebox, inside", stove.tunnel->fire_width(), stove.tunnel->firebox_length);
        add("tunnel, inside", stove.tunnel->width, tunnel_end(stove));
        add("tunnel, outside", stove.tunnel->width + 2 * thickness(stove.tunnel->lining),
            tunnel_end(stove));
    }
    add("riser, inside", 2 * riser_half_across(stove.riser, 0), axis);
    add("riser, outside", 2 * riser_half_across(stove.riser, wall), axis);
    if (stove.barrel && stove.plate) {
        add("barrel, inside", barrel_inside(*stove.barrel), axis);
        add("barrel, outside", stove.barrel->diameter, axis);
        add("plate", stove.plate->diameter, axis);
    }
    std::stable_sort(spans.begin(), spans.end(),
                     [](const Span& a, const Span& b) { return a.to < b.to; });
    return spans;
}

}  // namespace drawwell

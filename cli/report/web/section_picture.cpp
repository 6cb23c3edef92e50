#include "cli/report/web/section_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "cli/read/units.h"
#include "cli/report/nice_steps.h"
#include "cli/report/web/edges.h"
#include "cli/report/web/heat_colour.h"
#include "cli/report/web/section_drawing.h"

namespace drawwell {
namespace {

double mm(double metres) {
    return to_millimetres(metres);
}

/// Draws part by part, in millimetres; x counts from the feed's centre.
class Section {
  public:
    Section(const Stove& stove, const Results& results, std::size_t step)
        : stove_(stove), results_(results), drawing_(results, step) {
        axis_ = stove.tunnel ? mm(stove.tunnel->length) : 0;
        const double clear = stove.riser.bore > 0 ? stove.riser.bore : stove.riser.width;
        bore_ = mm(clear) / 2;
        skin_ = bore_ + mm(thickness(stove.riser.lining));
        top_ = mm(stove.riser.top);
        foot_ = stove.tunnel ? 0 : mm(stove.riser.foot);
        draw_feed();
        draw_tunnel();
        draw_barrel();
        draw_riser();
        draw_plate();
        stove_right_ = drawing_.most_x();
        stove_top_ = drawing_.most_y();
        stove_foot_ = drawing_.least_y();
        draw_flue();
    }

    const SectionDrawing& drawing() const { return drawing_; }
    double stove_right() const { return stove_right_; }
    double stove_top() const { return stove_top_; }
    double stove_foot() const { return stove_foot_; }

  private:
    /// Edges in millimetres of a column's cells along its part.
    std::vector<double> edges(std::string_view name, std::optional<double> first,
                              std::optional<double> last) const {
        const Column* column = results_.find(name);
        if (!column) return {};
        std::vector<double> position = axis_positions(results_, *column);
        if (position.size() != column->width) return {};
        for (double& each : position) each = mm(each);
        return cell_edges(position, first, last);
    }

    /// Pieces one above the other, between two distances on each side of the riser's axis, and
    /// only on the far side below `both_from`.
    void upright(std::string_view column, std::string_view name, const std::vector<double>& edge,
                 double inner, double outer, double both_from) {
        if (edge.empty() || !drawing_.begin(column, name, edge.size() - 1)) return;
        for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
            drawing_.piece(i, axis_ + inner, edge[i], axis_ + outer, edge[i + 1]);
            const double low = std::max(std::min(edge[i], edge[i + 1]), both_from);
            const double high = std::max(edge[i], edge[i + 1]);
            if (high > low) drawing_.piece(i, axis_ - outer, low, axis_ - inner, high);
        }
        drawing_.end();
    }

    void draw_feed() {
        if (!stove_.feed) return;
        const double half = mm(stove_.feed->depth) / 2, mouth = mm(stove_.feed->mouth);
        const double roof = stove_.tunnel ? mm(stove_.tunnel->fire_height()) : 0;
        const double wall = mm(thickness(stove_.feed->lining));
        const double foot_wall = mm(thickness(stove_.feed->foot_lining));
        drawing_.plain(-half - wall, roof, -half, mouth, "feed's wall");
        drawing_.plain(half, roof, half + wall, mouth, "feed's wall");
        drawing_.plain(-half - foot_wall, 0, -half, roof, "wall behind the fire");
        drawing_.line({-half, mouth}, {-half, 0}, "rule");
        drawing_.line({half, mouth}, {half, roof}, "rule");
    }

    void draw_tunnel() {
        if (!stove_.tunnel) return;
        const Tunnel& tunnel = *stove_.tunnel;
        const double start = stove_.feed ? -mm(stove_.feed->depth) / 2 : 0, end = axis_ - bore_;
        const auto height_at = [&](double x) {
            return mm(x < mm(tunnel.firebox_length) ? tunnel.fire_height() : tunnel.height);
        };
        const double floor = mm(thickness(tunnel.lining)), roof = mm(thickness(tunnel.roof));
        const std::vector<double> edge = edges("tunnel_gas_temperature", start, end);
        if (edge.empty()) return;
        const double feed_edge = stove_.feed ? mm(stove_.feed->depth) / 2 : start;
        if (drawing_.begin("tunnel_wall_temperature", "tunnel, inner face", edge.size() - 1)) {
            for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
                drawing_.piece(i, edge[i], -floor, edge[i + 1], 0);
                const double from = std::max(edge[i], feed_edge);
                const double ceiling = height_at(from);
                if (edge[i + 1] > from)
                    drawing_.piece(i, from, ceiling, edge[i + 1], ceiling + roof);
            }
            drawing_.end();
        }
        if (drawing_.begin("tunnel_gas_temperature", "gas in the tunnel", edge.size() - 1)) {
            for (std::size_t i = 0; i + 1 < edge.size(); ++i)
                drawing_.piece(i, edge[i], 0, edge[i + 1], height_at(edge[i]));
            drawing_.end();
        }
        drawing_.plain(end, -floor, axis_ + skin_, 0, "floor under the riser");
        if (stove_.port) {
            const double low = mm(stove_.port->height);
            if (low < mm(tunnel.height))
                drawing_.line({end, low}, {end, mm(tunnel.height)}, "line");
        }
    }

    void draw_barrel() {
        if (!stove_.barrel || !stove_.plate) return;
        const double radius = mm(stove_.barrel->diameter) / 2;
        const double foot = mm(stove_.barrel_foot()), under = mm(stove_.plate->underside);
        const double shell = std::max(mm(thickness(stove_.barrel->shell)), radius / 40);
        const std::vector<double> gas = edges("annulus_gas_temperature", top_, foot);
        upright("annulus_gas_temperature", "gas in the space round the riser", gas, skin_, radius,
                -1e9);
        // The gas that turns under the plate comes from the riser's last cell.
        if (const Column* riser = results_.find("riser_gas_temperature");
            riser && drawing_.begin("riser_gas_temperature", "gas under the plate", riser->width)) {
            drawing_.piece(riser->width - 1, axis_ - radius, top_, axis_ + radius, under);
            drawing_.end();
        }
        // Drawn at least a fortieth of its radius thick, or sheet would not be seen.
        upright("barrel_temperature", "barrel", edges("barrel_temperature", under, foot), radius,
                radius + shell, -1e9);
        drawing_.line({axis_ + skin_, foot}, {axis_ + radius, foot}, "line");
        drawing_.line({axis_ - radius, foot}, {axis_ - skin_, foot}, "line");
    }

    void draw_riser() {
        const double roof =
            stove_.tunnel ? mm(stove_.tunnel->height + thickness(stove_.tunnel->roof)) : foot_;
        const double middle = (bore_ + skin_) / 2;
        upright("riser_wall_temperature", "riser, inner face",
                edges("riser_wall_temperature", foot_, top_), bore_, middle, roof);
        upright("riser_skin_temperature", "riser, outside",
                edges("riser_skin_temperature", foot_, top_), middle, skin_, roof);
        const std::vector<double> edge = edges("riser_gas_temperature", foot_, top_);
        if (edge.empty() ||
            !drawing_.begin("riser_gas_temperature", "gas in the riser", edge.size() - 1))
            return;
        for (std::size_t i = 0; i + 1 < edge.size(); ++i)
            drawing_.piece(i, axis_ - bore_, edge[i], axis_ + bore_, edge[i + 1]);
        drawing_.end();
    }

    void draw_plate() {
        if (!stove_.plate) return;
        const double under = mm(stove_.plate->underside);
        const double tall = std::max(mm(stove_.plate->thickness), 8.0);  // so that it is seen
        const std::vector<double> edge =
            edges("plate_temperature", 0, mm(stove_.plate->diameter) / 2);
        if (edge.empty() || !drawing_.begin("plate_temperature", "plate", edge.size() - 1)) return;
        for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
            drawing_.piece(i, axis_ + edge[i], under, axis_ + edge[i + 1], under + tall);
            drawing_.piece(i, axis_ - edge[i + 1], under, axis_ - edge[i], under + tall);
        }
        drawing_.end();
    }

    struct Run {
        ChartPoint from, along;  // where it begins, a step of a millimetre
        double start = 0, length = 0, half = 0;
    };

    std::vector<Run> flue_runs(double start) const {
        std::vector<Run> runs;
        ChartPoint at{stove_.barrel ? axis_ + mm(stove_.barrel->diameter) / 2 : axis_,
                      mm(stove_.outlet_height())};
        for (const FlueSection& section : stove_.flue.sections) {
            const double share = std::clamp(section.rise / section.length, -1.0, 1.0);
            const ChartPoint along{std::sqrt(1 - share * share), share};
            const double length = mm(section.length);
            runs.push_back({at, along, start, length, mm(section.bore) / 2});
            at = {at.x + along.x * length, at.y + along.y * length};
            start += length;
        }
        return runs;
    }

    void draw_flue() {
        const std::vector<double> edge = edges("flue_gas_temperature", {}, {});
        if (edge.empty() || stove_.flue.sections.empty()) return;
        const std::vector<Run> runs = flue_runs(std::max(edge.front(), 0.0));
        // The wall first, a little wider than the gas, so that a rim of it shows.
        for (const bool wall : {true, false}) {
            if (!drawing_.begin(wall ? "flue_wall_temperature" : "flue_gas_temperature",
                                wall ? "flue, inner face" : "gas in the flue", edge.size() - 1))
                continue;
            for (const Run& run : runs) draw_run(run, edge, run.half * (wall ? 1.2 : 1.0));
            drawing_.end();
        }
    }

    void draw_run(const Run& run, const std::vector<double>& edge, double half) {
        for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
            const bool last = i + 2 == edge.size();
            const double from = std::max(i == 0 ? 0.0 : edge[i] - run.start, 0.0);
            const double to = std::min(last ? run.length : edge[i + 1] - run.start, run.length);
            if (to <= from) continue;
            const auto corner = [&](double way, double side) {
                return ChartPoint{run.from.x + run.along.x * way - run.along.y * side,
                                  run.from.y + run.along.y * way + run.along.x * side};
            };
            drawing_.piece(
                i, {corner(from, half), corner(to, half), corner(to, -half), corner(from, -half)});
        }
    }

    const Stove& stove_;
    const Results& results_;
    SectionDrawing drawing_;
    double axis_ = 0, bore_ = 0, skin_ = 0, top_ = 0, foot_ = 0;
    double stove_right_ = 0, stove_top_ = 0, stove_foot_ = 0;
};

struct Mark {
    double height = 0;  // [mm] over the tunnel floor
    std::string name;
    double shown = 0;  // where its text stands
};

std::vector<Mark> marks_of(const Stove& stove) {
    std::vector<Mark> marks;
    const auto add = [&](double height, std::string_view name) {
        marks.push_back({mm(height), fmt::format("{:.0f} {}", mm(height), name), 0});
    };
    add(0, stove.tunnel ? "tunnel floor" : "nothing");
    if (stove.tunnel) add(stove.tunnel->height, "tunnel roof");
    if (stove.feed) add(stove.feed->mouth, "feed mouth");
    if (stove.barrel && stove.plate) {
        add(stove.barrel_foot(), "barrel foot");
        if (!stove.flue.sections.empty()) add(stove.outlet_height(), "flue outlet");
    }
    add(stove.riser.top, "riser top");
    if (stove.plate) add(stove.plate->underside, "under plate");
    std::sort(marks.begin(), marks.end(),
              [](const Mark& a, const Mark& b) { return a.height < b.height; });
    return marks;
}

/// A pole of heights left of the stove, its texts pushed apart where they would touch.
std::string pole_svg(std::vector<Mark> marks, double x, double reach, double text) {
    double least = -1e9;
    for (Mark& mark : marks) {
        mark.shown = std::max(mark.height, least);
        least = mark.shown + 1.25 * text;
    }
    std::string svg;
    for (const Mark& mark : marks)
        svg += fmt::format(
            "<path class=\"rule\" d=\"M{:.1f} {:.1f}h{:.1f}L{:.1f} {:.1f}h{:.1f}\"/><text "
            "x=\"{:.1f}\" "
            "y=\"{:.1f}\" text-anchor=\"end\">{}</text>\n",
            x + reach, -mark.height, -0.5 * reach, x + 0.2 * reach, -mark.shown, -0.2 * reach,
            x - 0.3 * text, -mark.shown + 0.35 * text, mark.name);
    return svg;
}

std::string view_box(double x0, double y0, double x1, double y1) {
    return fmt::format("{:.0f} {:.0f} {:.0f} {:.0f}", x0, -y1, x1 - x0, y1 - y0);
}

}  // namespace

std::string section_picture(const Stove& stove, const Results& results, std::size_t step,
                            const std::string& id) {
    if (step >= results.time.size()) return "";
    const Section section(stove, results, step);
    const SectionDrawing& all = section.drawing();
    if (all.most_x() <= all.least_x()) return "";

    // The stove takes some three fifths of the width, the pole of heights the rest.
    const double wide = section.stove_right() - all.least_x();
    const double tall = section.stove_top() - section.stove_foot();
    const double full = 1.62 * std::max(wide, 0.55 * tall);
    const double text = 0.036 * full, margin = 0.03 * full;
    const double pole = all.least_x() - margin, x1 = section.stove_right() + 0.12 * full;
    const double x0 = x1 - full, y0 = section.stove_foot() - margin - 2 * text;
    const double y1 = section.stove_top() + margin + text;
    const NiceSteps ruler = nice_steps(0, 0.5 * wide, 1);
    const double bar = ruler.count > 1 ? ruler.at(ruler.count - 1) : 100;

    std::string svg = fmt::format(
        "<svg class=\"picture section\" style=\"--u:{:.2f}px\" viewBox=\"{}\" role=\"img\" "
        "aria-label=\"The stove cut open along its tunnel, to scale, painted by temperature\">\n"
        "<g class=\"stove\" id=\"{}\">\n{}</g>\n",
        full / 100, view_box(x0, y0, x1, y1), id, all.svg());
    svg += pole_svg(marks_of(stove), pole, margin, text);
    svg += fmt::format(
        "<path class=\"line\" d=\"M{:.1f} {:.1f}h{:.1f}m0 {:.1f}v{:.1f}m{:.1f} 0v{:.1f}\"/><text "
        "x=\"{:.1f}\" y=\"{:.1f}\">{:.0f} mm</text>\n</svg>\n",
        pole, -(y0 + 0.8 * text), bar, -0.2 * text, 0.4 * text, -bar, -0.4 * text,
        pole + bar + 0.4 * text, -(y0 + 0.5 * text), bar);

    const double rise = all.most_y() - all.least_y();
    if (rise > 1.15 * (y1 - y0) || all.most_x() > x1) {
        const double edge = 0.02 * std::max(rise, all.most_x() - all.least_x());
        svg += fmt::format(
            "<svg class=\"picture whole\" viewBox=\"{}\" role=\"img\" aria-label=\"The same with "
            "its whole flue, smaller\"><use href=\"#{}\"/></svg>\n",
            view_box(all.least_x() - edge, all.least_y() - edge, all.most_x() + edge,
                     all.most_y() + edge),
            id);
    }
    return svg;
}

std::vector<std::string> section_columns() {
    return {"tunnel_gas_temperature", "tunnel_wall_temperature", "riser_gas_temperature",
            "riser_wall_temperature", "riser_skin_temperature",  "annulus_gas_temperature",
            "barrel_temperature",     "plate_temperature",       "flue_gas_temperature",
            "flue_wall_temperature"};
}

std::string section_dimensions(const Stove& stove) {
    std::vector<std::string> parts;
    if (stove.feed)
        parts.push_back(
            fmt::format("feed {:.0f} by {:.0f} mm", mm(stove.feed->width), mm(stove.feed->depth)));
    if (stove.tunnel)
        parts.push_back(fmt::format("tunnel {:.0f} wide, {:.0f} high, {:.0f} mm from feed to riser",
                                    mm(stove.tunnel->width), mm(stove.tunnel->height),
                                    mm(stove.tunnel->length)));
    if (stove.riser.bore > 0)
        parts.push_back(fmt::format("riser {:.0f} mm bore", mm(stove.riser.bore)));
    else
        parts.push_back(
            fmt::format("riser {:.0f} by {:.0f} mm", mm(stove.riser.width), mm(stove.riser.depth)));
    if (stove.plate)
        parts.push_back(fmt::format("{:.0f} mm from riser to plate",
                                    mm(stove.plate->underside - stove.riser.top)));
    if (stove.barrel)
        parts.push_back(fmt::format("barrel {:.0f} across, {:.0f} mm high",
                                    mm(stove.barrel->diameter), mm(stove.barrel->height)));
    if (stove.plate)
        parts.push_back(fmt::format("plate {:.0f} across, {:g} mm thick", mm(stove.plate->diameter),
                                    mm(stove.plate->thickness)));
    double rise = 0, length = 0;
    for (const FlueSection& flue : stove.flue.sections) {
        rise += flue.rise;
        length += flue.length;
    }
    if (length > 0)
        parts.push_back(fmt::format("flue {:.0f} mm bore, {:.2f} m long, {:.2f} m up",
                                    mm(stove.flue.sections.front().bore), length, rise));
    std::string text;
    for (const std::string& part : parts) text += (text.empty() ? "" : "; ") + part;
    return text;
}

std::string heat_key() {
    std::string key = "<ul class=\"scale\">";
    for (const HeatAnchor& anchor : heat_scale)
        key += fmt::format("<li><i style=\"background:{}\"></i>{:.0f}{}</li>",
                           heat_colour(anchor.celsius), anchor.celsius,
                           anchor.celsius == heat_scale.back().celsius ? " °C and over" : "");
    return key + "</ul>\n";
}

}  // namespace drawwell

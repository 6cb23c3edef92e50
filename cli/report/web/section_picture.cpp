#include "cli/report/web/section_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "cli/read/units.h"
#include "cli/report/nice_steps.h"
#include "cli/report/section/fitting_shapes.h"
#include "cli/report/section/flue_way.h"
#include "cli/report/section/geometry.h"
#include "cli/report/section/outline.h"
#include "cli/report/web/edges.h"
#include "cli/report/web/heat_colour.h"
#include "cli/report/web/section_drawing.h"

namespace drawwell {
namespace {

double mm(double metres) {
    return to_millimetres(metres);
}

std::vector<ChartPoint> corners_of(const CutShape& shape) {
    std::vector<ChartPoint> corners;
    for (const FlatPoint& point : shape.points) corners.push_back({mm(point.x), mm(point.y)});
    return corners;
}

/// Paints the cut stove block by block, in millimetres.
class Section {
  public:
    Section(const Stove& stove, const Results& results, std::size_t step)
        : stove_(stove),
          results_(results),
          drawing_(results, step),
          axis_(mm(riser_axis(stove))),
          bore_(mm(riser_half_along(stove.riser, 0))),
          skin_(mm(riser_half_along(stove.riser, thickness(stove.riser.lining)))) {
        for (const CutBlock& block : cut_outline(stove))
            if (block.part != CutPart::flue_gas && block.part != CutPart::flue_wall) paint(block);
        for (const CutShape& shape : fitting_shapes(stove))
            drawing_.behind(corners_of(shape), shape.closed, shape.name);
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
    struct Box {
        double x1, y1, x2, y2;
    };
    enum class Along { tunnel, height };

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

    /// What of a box lies at each cell of a column; the outermost cells reach on to its end if
    /// `to_ends`.
    void slices(std::string_view column, std::string_view name, Along along, const Box& box,
                std::vector<double> edge, bool to_ends) {
        if (edge.empty() || !drawing_.begin(column, name, edge.size() - 1)) return;
        const auto [least, most] =
            along == Along::tunnel ? std::pair(box.x1, box.x2) : std::pair(box.y1, box.y2);
        if (to_ends) {
            const bool up = edge.back() > edge.front();
            edge.front() = up ? std::min(edge.front(), least) : std::max(edge.front(), most);
            edge.back() = up ? std::max(edge.back(), most) : std::min(edge.back(), least);
        }
        for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
            const double from = std::max(std::min(edge[i], edge[i + 1]), least);
            const double to = std::min(std::max(edge[i], edge[i + 1]), most);
            if (!(to > from)) continue;
            if (along == Along::tunnel)
                drawing_.piece(i, from, box.y1, to, box.y2);
            else
                drawing_.piece(i, box.x1, from, box.x2, to);
        }
        drawing_.end();
    }

    /// The box from a cell of a column, the last one.
    void last_cell(std::string_view column, std::string_view name, const Box& box) {
        const Column* found = results_.find(column);
        if (!found || !drawing_.begin(column, name, found->width)) return;
        drawing_.piece(found->width - 1, box.x1, box.y1, box.x2, box.y2);
        drawing_.end();
    }

    void paint(const CutBlock& block) {
        const Box box{mm(block.x1), mm(block.y1), mm(block.x2), mm(block.y2)};
        const double foot = mm(riser_stands_at(stove_)), top = mm(stove_.riser.top);
        switch (block.part) {
            case CutPart::feed_gas:
                drawing_.hollow(box.x1, box.y1, box.x2, box.y2, "feed");
                return;
            case CutPart::tunnel_gas:
                slices("tunnel_gas_temperature", "gas in the tunnel", Along::tunnel, box,
                       tunnel_edges("tunnel_gas_temperature"), true);
                return;
            case CutPart::doorway:
                slices("tunnel_gas_temperature", "gas in the riser's doorway", Along::tunnel, box,
                       tunnel_edges("tunnel_gas_temperature"), true);
                return;
            case CutPart::tunnel_floor:
            case CutPart::tunnel_roof:
                drawing_.plain(box.x1, box.y1, box.x2, box.y2, "tunnel");
                if (block.inmost) paint_tunnel_wall(box);
                return;
            case CutPart::riser_gas:
                slices("riser_gas_temperature", "gas in the riser", Along::height, box,
                       edges("riser_gas_temperature", foot, top), true);
                return;
            case CutPart::riser_wall:
                paint_riser_wall(box, foot, top);
                return;
            case CutPart::space_round_riser:
                slices("annulus_gas_temperature", "gas in the space round the riser", Along::height,
                       box, edges("annulus_gas_temperature", top, barrel_foot()), true);
                return;
            case CutPart::under_plate:
                // The gas that turns there comes from the riser's last cell.
                last_cell("riser_gas_temperature", "gas under the plate", box);
                return;
            case CutPart::barrel_wall:
                slices("barrel_temperature", "barrel", Along::height, seen_barrel(box),
                       edges("barrel_temperature", mm(stove_.plate->underside), barrel_foot()),
                       true);
                return;
            case CutPart::plate:
                paint_plate(box);
                return;
            case CutPart::feed_wall:
                drawing_.plain(box.x1, box.y1, box.x2, box.y2, "feed's wall");
                return;
            case CutPart::barrel_ring:
                drawing_.plain(box.x1, box.y1, box.x2, std::max(box.y2, box.y1 + mm(least_seen())),
                               "ring");
                return;
            case CutPart::jacket:
                drawing_.plain(box.x1, box.y1, box.x2, box.y2, "jacket");
                return;
            case CutPart::plate_cover:
                drawing_.plain(box.x1, box.y1, box.x2, std::max(box.y2, box.y1 + 8), "cover");
                return;
            case CutPart::flue_gas:
            case CutPart::flue_wall:
                return;  // the whole flue is drawn
        }
    }

    double barrel_foot() const { return mm(stove_.barrel_foot()); }
    /// Sheet is drawn at least a fortieth of the barrel's radius thick [m], or it would not be
    /// seen.
    double least_seen() const { return stove_.barrel->diameter / 80; }

    std::vector<double> tunnel_edges(std::string_view column) const {
        return edges(column, mm(back_wall(stove_)), axis_ - bore_);
    }

    /// Only where gas passes is the inner face painted; beyond it the floor goes on plain.
    void paint_tunnel_wall(const Box& box) {
        const Box by_gas{std::max(box.x1, mm(back_wall(stove_))), box.y1,
                         std::min(box.x2, axis_ - bore_), box.y2};
        slices("tunnel_wall_temperature", "tunnel, inner face", Along::tunnel, by_gas,
               tunnel_edges("tunnel_wall_temperature"), false);
    }

    /// The half of the wall at the gas by its inner face, the other by its outside.
    void paint_riser_wall(const Box& box, double foot, double top) {
        const double middle = (bore_ + skin_) / 2;
        const bool right = box.x1 >= axis_;
        const double inner = std::min(std::abs(box.x1 - axis_), std::abs(box.x2 - axis_));
        const double outer = std::max(std::abs(box.x1 - axis_), std::abs(box.x2 - axis_));
        const auto part = [&](std::string_view column, std::string_view name, double from,
                              double to) {
            if (!(to > from)) return;
            const Box half = right ? Box{axis_ + from, box.y1, axis_ + to, box.y2}
                                   : Box{axis_ - to, box.y1, axis_ - from, box.y2};
            slices(column, name, Along::height, half, edges(column, foot, top), true);
        };
        part("riser_wall_temperature", "riser, inner face", inner, std::min(outer, middle));
        part("riser_skin_temperature", "riser, outside", std::max(inner, middle), outer);
    }

    Box seen_barrel(Box box) const {
        const double missing = std::max(mm(least_seen()) - (box.x2 - box.x1), 0.0);
        (box.x1 >= axis_ ? box.x2 : box.x1) += box.x1 >= axis_ ? missing : -missing;
        return box;
    }

    void paint_plate(Box box) {
        box.y2 = std::max(box.y2, box.y1 + 8);  // so that it is seen
        const std::vector<double> edge =
            edges("plate_temperature", 0, mm(stove_.plate->diameter) / 2);
        if (edge.empty() || !drawing_.begin("plate_temperature", "plate", edge.size() - 1)) return;
        for (std::size_t i = 0; i + 1 < edge.size(); ++i)
            for (const auto& [from, to] : {std::pair(axis_ + edge[i], axis_ + edge[i + 1]),
                                           std::pair(axis_ - edge[i + 1], axis_ - edge[i])}) {
                const double left = std::max(from, box.x1), right = std::min(to, box.x2);
                if (right > left) drawing_.piece(i, left, box.y1, right, box.y2);
            }
        drawing_.end();
    }

    void draw_flue() {
        const std::vector<double> edge = edges("flue_gas_temperature", {}, {});
        if (edge.empty() || stove_.flue.sections.empty()) return;
        const FlueWay way = flue_way(stove_);
        // Walls first, a little wider than the gas, so that a rim of them shows.
        for (const bool wall : {true, false}) {
            for (const BellCut& bell : way.bells) draw_bell_wall(bell, wall);
            if (!drawing_.begin(wall ? "flue_wall_temperature" : "flue_gas_temperature",
                                wall ? "flue, inner face" : "gas in the flue", edge.size() - 1))
                continue;
            for (const CutShape& stub : way.stubs)
                if (!wall) drawing_.piece(0, corners_of(stub));
            for (const BellCut& bell : way.bells) draw_bell(bell, edge, wall);
            for (const FlueRun& run : way.runs)
                draw_run(run, edge, wall ? std::max(run.outer, 1.2 * run.half) : run.half);
            drawing_.end();
        }
        for (const CutShape& pipe : way.bypass)
            drawing_.behind(corners_of(pipe), pipe.closed, pipe.name);
    }

    void draw_bell_wall(const BellCut& bell, bool wall) {
        if (!wall) return;
        const double thick = mm(thickness(bell.bell->wall));
        drawing_.plain(mm(bell.x1) - thick, mm(bell.y1), mm(bell.x2) + thick, mm(bell.y2) + thick,
                       "bell, " + bell.bell->name);
    }

    /// Two halves, the upper one first on the gas's way.
    void draw_bell(const BellCut& bell, const std::vector<double>& edge, bool wall) {
        if (wall) return;
        const double middle = (bell.y1 + bell.y2) / 2;
        const auto cell_at = [&](double way) {
            std::size_t cell = 0;
            while (cell + 2 < edge.size() && edge[cell + 1] < mm(way)) ++cell;
            return cell;
        };
        const double height = bell.y2 - bell.y1;
        drawing_.piece(cell_at(bell.start + 0.25 * height), mm(bell.x1), mm(middle), mm(bell.x2),
                       mm(bell.y2));
        drawing_.piece(cell_at(bell.start + 0.75 * height), mm(bell.x1), mm(bell.y1), mm(bell.x2),
                       mm(middle));
    }

    void draw_run(const FlueRun& run, const std::vector<double>& edge, double half) {
        const double start = mm(run.start), length = mm(run.length), aside = mm(half);
        const auto corner = [&](double way, double side) {
            const FlatPoint at = run.at(way / 1000, side / 1000);
            return ChartPoint{mm(at.x), mm(at.y)};
        };
        for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
            const double from = std::max(i == 0 ? 0.0 : edge[i] - start, 0.0);
            const double to = std::min(i + 2 == edge.size() ? length : edge[i + 1] - start, length);
            if (to <= from) continue;
            // A bend before it is closed by a little more of its first piece.
            const double first = from > 0 || !run.bent ? from : -aside;
            drawing_.piece(i, {corner(first, aside), corner(to, aside), corner(to, -aside),
                               corner(first, -aside)});
        }
    }

    const Stove& stove_;
    const Results& results_;
    SectionDrawing drawing_;
    double axis_, bore_, skin_;
    double stove_right_ = 0, stove_top_ = 0, stove_foot_ = 0;
};

// Shares of the picture's width: our choice, so that names can be read at 360 pixels.
constexpr double letter_size = 0.036, letter_width = 0.62;  // of a letter, as wide as DejaVu Sans
constexpr double pole_width = 0.045, flue_peek = 0.08;

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

    // Beside the stove the pole of heights takes what its longest name needs, at the size that
    // page.css gives letters on a phone.
    const std::vector<Mark> marks = marks_of(stove);
    std::size_t letters = 0;
    for (const Mark& mark : marks) letters = std::max(letters, mark.name.size());
    const double names = letter_width * letter_size * static_cast<double>(letters);
    const double wide = section.stove_right() - all.least_x();
    const double tall = section.stove_top() - section.stove_foot();
    const double full = std::max(wide / (1 - names - pole_width - flue_peek), 0.9 * tall);
    const double text = letter_size * full, margin = pole_width / 1.4 * full;
    const double spare = full * (1 - names - pole_width - flue_peek) - wide;
    const double pole = all.least_x() - margin - spare / 2;
    const double x1 = section.stove_right() + flue_peek * full + spare / 2;
    const double x0 = x1 - full, y0 = section.stove_foot() - margin - 2 * text;
    const double y1 = section.stove_top() + margin + text;
    const NiceSteps ruler = nice_steps(0, 0.5 * wide, 1);
    const double bar = ruler.count > 1 ? ruler.at(ruler.count - 1) : 100;

    std::string svg = fmt::format(
        "<svg class=\"picture section\" style=\"--u:{:.2f}px\" viewBox=\"{}\" role=\"img\" "
        "aria-label=\"The stove cut open along its tunnel, to scale, painted by temperature\">\n"
        "<g class=\"stove\" id=\"{}\">\n{}</g>\n",
        full / 100, view_box(x0, y0, x1, y1), id, all.svg());
    svg += pole_svg(marks, pole, margin, text);
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

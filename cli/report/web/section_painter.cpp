#include "cli/report/web/section_painter.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

#include "cli/read/units.h"
#include "cli/report/section/fitting_shapes.h"
#include "cli/report/section/flue_way.h"
#include "cli/report/section/geometry.h"
#include "cli/report/section/outline.h"
#include "cli/report/web/edges.h"

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
    Section(const Stove& stove, const Results& results, const Moment& moment)
        : stove_(stove),
          results_(results),
          drawing_(results, moment),
          axis_(mm(riser_axis(stove))),
          bore_(mm(riser_half_along(stove.riser, 0))),
          skin_(mm(riser_half_along(stove.riser, thickness(stove.riser.lining)))) {
        for (const CutBlock& block : cut_outline(stove)) paint(block);
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
                if (stove_.flue.sections.empty()) paint_hole(box);
                return;
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

    /// Through the shell, and a little beyond, or it would not be seen.
    void paint_hole(const Box& box) {
        const Box seen = seen_barrel(box);
        drawing_.hollow(seen.x1, seen.y1, seen.x2 + (box.y2 - box.y1) / 5, seen.y2, "open outlet");
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
            for (const LevelPipe& pipe : way.connect)
                if (!wall) drawing_.piece(0, corners_of(pipe.shape(pipe.bore / 2)));
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

}  // namespace

PaintedSection paint_section(const Stove& stove, const Results& results, const Moment& moment) {
    const Section section(stove, results, moment);
    return {section.drawing(), section.stove_right(), section.stove_top(), section.stove_foot()};
}

}  // namespace drawwell

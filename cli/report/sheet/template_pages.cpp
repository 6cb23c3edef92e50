#include "cli/report/sheet/template_pages.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/units.h"

namespace drawwell {
namespace {

constexpr int most_tiles = 6;         // on a side
constexpr double key_line = 3.8;      // [mm]
constexpr double check_length = 100;  // [mm]

/// A page's part of a template.
class Tile {
  public:
    Tile(const Template& shape, PaperBox box, int column, int row)
        : shape_(shape),
          box_(box),
          shift_{box.left - column * box.width(), box.top - row * box.height()} {}

    std::vector<PaperLine> lines() const {
        std::vector<PaperLine> all;
        for (const TemplateLine& line : shape_.lines) {
            const std::size_t sides =
                line.points.size() - (line.closed || line.points.empty() ? 0 : 1);
            PaperLine run{{}, line.pen};
            for (std::size_t k = 0; k < sides; ++k) {
                const auto part = clipped(moved(line.points[k]),
                                          moved(line.points[(k + 1) % line.points.size()]), box_);
                if (part.empty() || !continues(run, part.front())) finish(run, all);
                for (const PaperPoint& point : part)
                    if (!continues(run, point) || run.points.empty()) run.points.push_back(point);
            }
            finish(run, all);
        }
        return all;
    }

  private:
    PaperPoint moved(PaperPoint point) const { return {point.x + shift_.x, point.y + shift_.y}; }
    static bool continues(const PaperLine& run, PaperPoint point) {
        return run.points.empty() ||
               std::hypot(run.points.back().x - point.x, run.points.back().y - point.y) < 1e-9;
    }
    static void finish(PaperLine& run, std::vector<PaperLine>& all) {
        if (run.points.size() > 1) all.push_back(run);
        run.points.clear();
    }

    const Template& shape_;
    PaperBox box_;
    PaperPoint shift_;
};

void add_check_line(PaperPage& page, double left, double y) {
    page.lines.push_back({{{left, y - 2}, {left, y + 2}}, Pen::cut});
    page.lines.push_back({{{left, y}, {left + check_length, y}}, Pen::cut});
    page.lines.push_back({{{left + check_length, y - 2}, {left + check_length, y + 2}}, Pen::cut});
    page.texts.push_back(
        {{left + check_length + 3, y + 0.7},
         fmt::format("{:.0f} mm ({})", check_length, show_inches(check_length / 1000)),
         2.6,
         true});
    page.texts.push_back(
        {{left, y + 5.5},
         "Measure this line before you cut. If it is off, print again at full size "
         "(100 %, not fitted to the page).",
         2.6});
}

}  // namespace

void add_template(SheetFlow& flow, const Template& shape) {
    std::vector<std::string> key;
    for (const TemplateLine& line : shape.lines)
        if (!line.name.empty()) key.push_back(fmt::format("{}  {}", key.size() + 1, line.name));
    flow.new_page();
    const double width = std::floor((flow.right() - flow.left()) / 10) * 10;
    const double key_height = key_line * static_cast<double>(key.size()) + 14;
    const double top = flow.at() + 19;
    const double height = std::floor((flow.bottom() - top - key_height) / 10) * 10;
    const int columns = std::max(1, static_cast<int>(std::ceil(shape.width / width - 1e-9)));
    const int rows = std::max(1, static_cast<int>(std::ceil(shape.height / height - 1e-9)));
    if (columns > most_tiles || rows > most_tiles) {
        flow.heading(shape.title);
        flow.paragraph("Too large for paper: strike these with a trammel.");
        for (const std::string& line : key) flow.paragraph(line);
        return;
    }
    bool first = true;
    for (int row = 0; row < rows; ++row)
        for (int column = 0; column < columns; ++column) {
            const PaperBox box{flow.left(), top, flow.left() + width, top + height};
            std::vector<PaperLine> lines = Tile(shape, box, column, row).lines();
            if (lines.empty()) continue;
            if (!first) flow.new_page();
            first = false;
            const std::string place =
                rows * columns == 1
                    ? "Full size. "
                    : fmt::format(
                          "Full size, sheet {} of {} across and {} of {} down; trim along the thin "
                          "frame and butt sheet against sheet. ",
                          column + 1, columns, row + 1, rows);
            flow.heading(shape.title, 0);
            const std::string use = place + shape.use;
            PaperPage& page = flow.page();
            double y = flow.at() - 1;
            for (const std::string& line : lines_of(use, width, SheetFlow::text_size)) {
                page.texts.push_back({{flow.left(), y}, line, SheetFlow::text_size});
                y += SheetFlow::line_height;
            }
            page.lines.push_back({rectangle(box), Pen::frame, true});
            page.lines.insert(page.lines.end(), lines.begin(), lines.end());
            y = box.bottom + 5;
            for (const std::string& line : key) {
                page.texts.push_back(
                    {{flow.left(), y}, cut_to(line, flow.right() - flow.left(), 2.6), 2.6});
                y += key_line;
            }
            add_check_line(page, flow.left(), y + 1);
        }
}

}  // namespace drawwell

#include "cli/report/sheet/flue_drawing.h"

#include <algorithm>

#include "cli/report/section/flue_way.h"
#include "cli/report/sheet/ledger.h"
#include "cli/report/sheet/scale_bar.h"
#include "cli/report/sheet/section_measures.h"
#include "cli/report/sheet/section_view.h"

namespace drawwell {
namespace {

constexpr double most_height = 130;                      // [mm] on paper
constexpr double ledger_width = 75, beside_ledger = 11;  // [mm]
constexpr double bar_room = 12;                          // [mm] under the drawing

std::vector<FlatPoint> outline_of(const FlueRun& run, double half) {
    const double first = run.bent ? -half : 0;  // closes the bend
    return {run.at(first, half), run.at(run.length, half), run.at(run.length, -half),
            run.at(first, -half)};
}

Extent extent_of(const Stove& stove, const FlueWay& way) {
    Extent all = section_extent(stove);
    for (const FlueRun& run : way.runs)
        for (const FlatPoint& point : outline_of(run, run.outer)) all.take(point.x, point.y);
    for (const BellCut& bell : way.bells) {
        const double wall = thickness(bell.bell->wall);
        all.take(bell.x1 - wall, bell.y1);
        all.take(bell.x2 + wall, bell.y2 + wall);
    }
    const auto take = [&](const CutShape& shape) {
        for (const FlatPoint& point : shape.points) all.take(point.x, point.y);
    };
    for (const LevelPipe& pipe : way.connect) take(pipe.shape(pipe.outer / 2));
    for (const CutShape& shape : way.bypass) take(shape);
    return all;
}

void draw_bell(PaperPage& page, const View& view, const BellCut& cut, const Library& library) {
    for (const Band& band : bands(cut.bell->wall)) {
        const Stuff stuff = stuff_of(library.materials.at(band.layer->material));
        view.block(page, stuff, cut.x1 - band.to, cut.y1, cut.x1 - band.from, cut.y2 + band.to);
        view.block(page, stuff, cut.x2 + band.from, cut.y1, cut.x2 + band.to, cut.y2 + band.to);
        view.block(page, stuff, cut.x1 - band.from, cut.y2 + band.from, cut.x2 + band.from,
                   cut.y2 + band.to);
    }
    view.hollow(page, cut.x1, cut.y1, cut.x2, cut.y2);
}

void draw_piece(PaperPage& page, const View& view, const std::vector<FlatPoint>& points,
                std::string fill) {
    PaperLine line{{}, Pen::outline, true, std::move(fill)};
    for (const FlatPoint& point : points) line.points.push_back(view.at(point.x, point.y));
    page.lines.push_back(std::move(line));
}

void draw_flue(PaperPage& page, const View& view, const FlueWay& way, const Library& library) {
    const auto draw_wall = [&](const std::vector<FlatPoint>& outline, const BuildUp& wall) {
        if (wall.empty()) return;
        draw_piece(page, view, outline, tint(stuff_of(library.materials.at(wall.back().material))));
    };
    for (const BellCut& bell : way.bells) draw_bell(page, view, bell, library);
    for (const LevelPipe& pipe : way.connect)
        draw_wall(pipe.shape(pipe.outer / 2).points, *pipe.wall);
    for (const FlueRun& run : way.runs) {
        if (run.outer > run.half) draw_wall(outline_of(run, run.outer), run.section->wall);
        draw_piece(page, view, outline_of(run, run.half), gas_tint);
    }
    // Last, so that they open into what they lead to.
    for (const LevelPipe& pipe : way.connect)
        draw_piece(page, view, pipe.shape(pipe.bore / 2).points, gas_tint);
    draw_shapes(page, view, way.bypass);
}

std::vector<LedgerRow> heights_of(const View& view, const FlueWay& way) {
    std::vector<LedgerRow> rows;
    rows.push_back({view.at(way.outlet.x, way.outlet.y), "where it begins", way.outlet.y});
    for (const BellCut& bell : way.bells) {
        rows.push_back(
            {view.at(bell.x2, bell.y1), "floor of the bell, " + bell.bell->name, bell.y1});
        rows.push_back({view.at(bell.x2, bell.y2), "roof inside, " + bell.bell->name, bell.y2});
        const double out = bell.y1 + bell.bell->outlet;
        rows.push_back({view.at(bell.x2, out), "out of the bell, " + bell.bell->name, out});
    }
    for (const FlueRun& run : way.runs)
        rows.push_back(
            {view.at(run.end().x, run.end().y), "end of " + run.section->name, run.end().y});
    for (const CutShape& pipe : way.bypass) {
        const double height = (pipe.points.front().y + pipe.points.back().y) / 2;
        rows.push_back({view.at(pipe.points[1].x, height), "bypass", height});
        break;
    }
    return rows;
}

}  // namespace

void add_flue_drawing(SheetFlow& flow, const Stove& stove, const Library& library) {
    if (stove.flue.sections.empty()) return;
    const FlueWay way = flue_way(stove);
    const Extent extent = extent_of(stove, way);
    const double width = flow.right() - flow.left() - ledger_width - beside_ledger;
    const double scale = scale_for(extent, width, most_height);
    const std::size_t count = 2 + 3 * way.bells.size() + way.runs.size();
    const double height = std::max((extent.y_most - extent.y_least) * 1000 / scale + 4,
                                   Ledger::pitch * static_cast<double>(count) + 12);
    flow.heading("The gas's way to the open air, turned into one plane", height + bar_room);
    const PaperBox whole = flow.take(height + bar_room);
    const View view(extent, {whole.left, whole.top + 4, whole.left + width, whole.bottom}, scale);
    PaperPage& page = flow.page();
    const Ledger ledger{
        {whole.right - ledger_width, whole.top + 7, whole.right, whole.top + height}};
    add_ledger_title(page, ledger, "heights of axes over the tunnel floor", whole.top + 2);
    add_ledger(page, ledger, heights_of(view, way));
    draw_blocks(page, view, stove, library);
    draw_flue(page, view, way, library);
    add_scale_bar(page, whole.left, whole.bottom - 4, scale);
}

}  // namespace drawwell

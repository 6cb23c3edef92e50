#include "cli/report/sheet/drawing_pages.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/report/sheet/ledger.h"
#include "cli/report/sheet/plan_view.h"
#include "cli/report/sheet/scale_bar.h"
#include "cli/report/sheet/section_measures.h"
#include "cli/report/sheet/section_view.h"
#include "cli/report/sheet/sheet_text.h"

namespace drawwell {
namespace {

constexpr double row_pitch = 4.6;              // [mm] of the widths under a drawing
constexpr double ledger_width = 75;            // [mm]
constexpr double beside_ledger = 11;           // [mm] for lines to spread
constexpr double tick = 0.9;                   // [mm] half of a dimension line's end
constexpr double line_pitch = 2.2;             // [mm] of dimension lines side by side
constexpr double over_bar = 9, bar_room = 12;  // [mm] round the scale bar

/// A dimension line under the drawing: from end to end at a height of its own.
void add_width(PaperPage& page, const View& view, const Ledger& ledger, const Span& span,
               double y) {
    for (const double end : {span.from, span.to})
        page.lines.push_back({{view.at(end, span.height), {view.x(end), y + tick}}, Pen::measure});
    page.lines.push_back({{{view.x(span.from), y}, {view.x(span.to), y}}, Pen::measure});
    add_ledger_row(page, ledger, {{view.x(span.to), y}, span.name, span.to - span.from}, y);
}

}  // namespace

double add_section(SheetFlow& flow, const Stove& stove, const Library& library) {
    const std::vector<Span> widths = section_widths(stove);
    const double under = row_pitch * static_cast<double>(widths.size()) + over_bar + bar_room;
    flow.heading("Section along the tunnel");
    const PaperBox whole{flow.left(), flow.at(), flow.right(), flow.bottom()};
    const PaperBox box{whole.left, whole.top, whole.right - ledger_width - beside_ledger,
                       whole.bottom - under};
    const Extent extent = section_extent(stove);
    const double scale = scale_for(extent, box.width(), box.height() - 4);
    const View view(extent, {box.left, box.top + 4, box.right, box.bottom}, scale);
    PaperPage& page = flow.page();

    // Lines first, so that the stove covers them.
    Ledger ledger{{whole.right - ledger_width, box.top + 7, whole.right, box.bottom}};
    std::vector<LedgerRow> rows = section_heights(view, stove);
    const double needed = Ledger::pitch * static_cast<double>(rows.size());
    const double first =
        std::min(std::max(view.bottom() + 6, ledger.box.top + needed + 3), box.bottom + 6);
    ledger.box.bottom = first - 6;
    const std::size_t missing = add_ledger(page, ledger, std::move(rows));
    add_ledger_title(
        page, ledger,
        missing == 0 ? "heights over the tunnel floor"
                     : fmt::format("heights over the tunnel floor; {} more in the lists", missing),
        box.top + 2);
    add_ledger_title(page, ledger, "along the tunnel", first);
    double y = first;
    for (const Span& span : widths) add_width(page, view, ledger, span, y += row_pitch);
    draw_section(page, view, stove, library);
    const double bar = std::min(y + over_bar, whole.bottom - 1);
    add_scale_bar(page, whole.left, bar, scale);
    flow.skip(bar + 3 - whole.top);
    return scale;
}

void add_plan(SheetFlow& flow, const Stove& stove, const Library& library, double scale) {
    const std::vector<Span> widths = plan_widths(stove);
    const Extent extent = plan_extent(stove);
    const double lines = line_pitch * static_cast<double>(widths.size()) + 4;
    const double width = flow.right() - flow.left() - ledger_width - beside_ledger - lines;
    scale = std::max(scale, scale_for(extent, width, 110));
    const double ledger_height = Ledger::pitch * static_cast<double>(widths.size()) + 8;
    const double height =
        std::max((extent.y_most - extent.y_least) * 1000 / scale + 4, ledger_height);
    flow.heading("Plan at the height of the tunnel's axis, barrel and plate over it",
                 height + bar_room);
    const PaperBox whole = flow.take(height + bar_room);
    const View view(extent, {whole.left, whole.top + 4, whole.left + width, whole.bottom}, scale);
    PaperPage& page = flow.page();

    const Ledger ledger{
        {whole.right - ledger_width, whole.top + 7, whole.right, whole.top + height}};
    add_ledger_title(page, ledger, "across the tunnel", whole.top + 2);
    std::vector<LedgerRow> rows;
    double x = whole.left + width + 2;
    for (const Span& span : widths) {
        for (const double end : {span.from, span.to})
            page.lines.push_back(
                {{view.at(span.height, end), {x + tick, view.y(end)}}, Pen::measure});
        page.lines.push_back({{{x, view.y(span.from)}, {x, view.y(span.to)}}, Pen::measure});
        rows.push_back({{x + tick, view.y(span.to)}, span.name, span.to - span.from});
        x += line_pitch;
    }
    add_ledger(page, ledger, std::move(rows));
    draw_plan(page, view, stove, library);
    add_scale_bar(page, whole.left, whole.bottom - 4, scale);
}

}  // namespace drawwell

#include "cli/report/sheet/stove_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <utility>

#include "cli/report/cautions.h"
#include "cli/report/sheet/cut_list.h"
#include "cli/report/sheet/drawing_pages.h"
#include "cli/report/sheet/flue_drawing.h"
#include "cli/report/sheet/list_pages.h"
#include "cli/report/sheet/order_of_work.h"
#include "cli/report/sheet/template_pages.h"

namespace drawwell {
namespace {

std::string mark_text(const std::string& mark) {
    if (mark == "built") return "built by these figures";
    if (mark == "measured") return "measured on the built stove";
    return "drawn, not built yet";
}

void add_head(SheetFlow& flow, const Stove& stove, const SheetFrame& frame) {
    const SheetHead& head = frame.head;
    const auto said = [](const std::string& text) { return text.empty() ? "not said" : text; };
    flow.row({{1}, {1}, {1}, {1}}, {"drawn by", "date", "mark", "stove file"}, true);
    flow.row({{1}, {1}, {1}, {1}},
             {said(head.author), said(head.date), mark_text(head.mark), frame.file});
    flow.paragraph(
        "A drawing from a calculation, and no permission: carbon monoxide kills unnoticed. Read "
        "the cautions before anything is cut or lit; local codes come first.");
    if (const std::string caution = no_flue_caution(stove); !caution.empty())
        flow.paragraph(caution);
}

void add_cautions(SheetFlow& flow, const Stove& stove, const Library& library) {
    flow.heading("Cautions");
    if (const std::string caution = no_flue_caution(stove); !caution.empty())
        flow.paragraph(caution, "-");
    for (const std::string_view caution : standing_cautions()) flow.paragraph(caution, "-");
    std::set<std::string> seen;
    for (const Piece& piece : cut_list(stove, library)) {
        const Material& material = library.materials.at(piece.material);
        if (material.hazard.empty() || !seen.insert(material.name).second) continue;
        flow.paragraph(fmt::format("{}: {}", material.meaning, material.hazard), "-");
    }
    flow.paragraph(
        "Blanked or narrowed ways for the gas, a damper shut on embers, or a feed covered too soon "
        "fill a room with carbon monoxide.",
        "-");
    flow.paragraph(
        "A chimney fire: shut the air, leave the house, call the fire brigade; have the flue "
        "looked "
        "at before the next fire.",
        "-");
}

}  // namespace

std::vector<PaperPage> stove_sheet(const Stove& stove, const Library& library,
                                   const SheetFrame& frame) {
    SheetFlow flow(frame.paper, stove.title.empty() ? "a stove without a title" : stove.title);
    add_head(flow, stove, frame);
    const double scale = add_section(flow, stove, library);
    add_plan(flow, stove, library, scale);
    add_flue_drawing(flow, stove, library);
    for (const std::string& remark : drawing_remarks(stove)) flow.paragraph(remark, "-");
    add_gas_areas(flow, stove);
    add_volumes(flow, stove);
    add_walls(flow, stove);
    add_flue_table(flow, stove);
    add_cut_list(flow, stove, library);
    add_holes(flow, stove);
    add_materials(flow, stove, library);
    flow.heading("Order of work", 40);
    int step = 0;
    for (const std::string& line : order_of_work(stove))
        flow.paragraph(line, fmt::format("{}.", ++step));
    add_cautions(flow, stove, library);
    if (frame.templates)
        for (const Template& shape : templates_for(stove)) add_template(flow, shape);
    return std::move(flow).finish();
}

}  // namespace drawwell

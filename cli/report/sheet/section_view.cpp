#include "cli/report/sheet/section_view.h"

#include "cli/report/section/fitting_shapes.h"
#include "cli/report/section/outline.h"
#include "cli/report/sheet/gas_line.h"

namespace drawwell {

void draw_shapes(PaperPage& page, const View& view, std::span<const CutShape> shapes) {
    for (const CutShape& shape : shapes) {
        PaperLine line{{}, Pen::hidden, shape.closed};
        for (const FlatPoint& point : shape.points)
            line.points.push_back(view.at(point.x, point.y));
        page.lines.push_back(std::move(line));
    }
}

void draw_blocks(PaperPage& page, const View& view, const Stove& stove, const Library& library) {
    for (const CutBlock& block : cut_outline(stove)) {
        if (block.material.empty())
            view.hollow(page, block.x1, block.y1, block.x2, block.y2);
        else
            view.block(page, stuff_of(library.materials.at(std::string(block.material))), block.x1,
                       block.y1, block.x2, block.y2);
    }
}

void draw_section(PaperPage& page, const View& view, const Stove& stove, const Library& library) {
    draw_blocks(page, view, stove, library);
    draw_shapes(page, view, fitting_shapes(stove));
    draw_gas_line(page, view, stove);
}

}  // namespace drawwell

#include "cli/report/sheet/list_pages.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/read/units.h"
#include "cli/report/section/geometry.h"
#include "cli/report/sheet/cut_list.h"
#include "cli/report/sheet/gas_way.h"
#include "cli/report/sheet/sheet_text.h"

namespace drawwell {
namespace {

constexpr PaperAnchor end = PaperAnchor::end;

std::string size_mm(const Piece& piece) {
    switch (piece.form) {
        case Piece::Form::flat:
            return sizes_mm({piece.a, piece.b, piece.thickness});
        case Piece::Form::disc:
            return fmt::format("round {}", sizes_mm({piece.a, piece.thickness}));
        case Piece::Form::ring:
            return fmt::format("ring {}, hole {}", sizes_mm({piece.a, piece.thickness}),
                               mm_text(piece.b));
        case Piece::Form::tube:
            break;
    }
    return fmt::format("inside {}, long {}", sizes_mm({piece.a, piece.thickness}),
                       mm_text(piece.b));
}

std::string size_inch(const Piece& piece) {
    switch (piece.form) {
        case Piece::Form::flat:
            return sizes_inch({piece.a, piece.b, piece.thickness});
        case Piece::Form::disc:
            return fmt::format("round {}", sizes_inch({piece.a, piece.thickness}));
        case Piece::Form::ring:
            return fmt::format("ring {}, hole {}", sizes_inch({piece.a, piece.thickness}),
                               show_inches(piece.b));
        case Piece::Form::tube:
            break;
    }
    return fmt::format("inside {}, long {}", sizes_inch({piece.a, piece.thickness}),
                       show_inches(piece.b));
}

std::string layers_text(const BuildUp& wall) {
    std::string text;
    for (const Layer& layer : wall)
        text += fmt::format("{}{} {}", text.empty() ? "" : ", then ", both_text(layer.thickness),
                            spoken(layer.material));
    return text.empty() ? "nothing" : text;
}

std::string mass_text(double mass) {
    return three_digits(mass) + " kg";
}
std::string pounds_text(double mass) {
    return three_digits(number_in(mass, "lb", Quantity::mass)) + " lb";
}

}  // namespace

void add_gas_areas(SheetFlow& flow, const Stove& stove) {
    const std::vector<GasArea> areas = gas_areas(stove);
    const GasArea* least = narrowest(areas);
    flow.heading("The gas's way, as shares of the bore", 60);
    const std::vector<SheetColumn> columns{{4.4}, {1.6, end}, {1.6, end}, {1.2, end}, {4.4}};
    flow.row(columns, {"opening", "cm2", "sq in", "share", ""}, true);
    const double bars = flow.left() + (flow.right() - flow.left()) * 0.69;
    const double most = flow.right() - bars - 4;
    const double whole = most / 2.5;  // [mm] of a bar for the bore itself
    for (const GasArea& area : areas) {
        const std::string mark = &area == least ? ", the narrowest" : area.aside ? ", aside" : "";
        flow.row(columns,
                 {area.name + mark, three_digits(number_in(area.area, "cm2", Quantity::area)),
                  three_digits(number_in(area.area, "in2", Quantity::area)),
                  fmt::format("{:.0f} %", to_percent(area.share)), ""});
        const double base = flow.at() - 0.5 - SheetFlow::line_height;
        flow.page().lines.push_back(
            {rectangle({bars, base - 1.9, bars + std::min(area.share * whole, most), base + 0.1}),
             Pen::frame, true,
             &area == least ? "#c2410c"
             : area.aside   ? "#c4dfe6"
                            : "#33708a"});
        flow.page().lines.push_back(
            {{{bars + whole, base - 2.7}, {bars + whole, base + 1}}, Pen::outline});
    }
    flow.paragraph(
        "The upright line is the riser's bore, 100 %. What is narrower than its neighbours costs "
        "draw; `drawwell burn` says how much is left.");
}

void add_volumes(SheetFlow& flow, const Stove& stove) {
    flow.heading("Volumes");
    const std::vector<SheetColumn> columns{{4}, {2, end}, {2, end}, {4}};
    flow.row(columns, {"room for gas", "litres", "US gal", ""}, true);
    double sum = 0;
    const auto add = [&](const std::string& name, double volume, bool bold) {
        flow.row(columns,
                 {name, three_digits(number_in(volume, "l", Quantity::volume)),
                  three_digits(number_in(volume, "gal", Quantity::volume)), ""},
                 bold);
    };
    for (const GasVolume& part : gas_volumes(stove)) {
        add(part.name, part.volume, false);
        sum += part.volume;
    }
    add("together", sum, true);
}

void add_walls(SheetFlow& flow, const Stove& stove) {
    flow.heading("Walls, from the gas outwards");
    const std::vector<SheetColumn> columns{{2}, {6}};
    const auto add = [&](const std::string& name, const BuildUp& wall) {
        flow.row(columns, {name, layers_text(wall)});
    };
    if (stove.feed) {
        add("feed", stove.feed->lining);
        if (stove.tunnel) add("behind the fire", stove.feed->foot_lining);
    }
    if (stove.tunnel) {
        add("tunnel, floor and sides", stove.tunnel->lining);
        add("tunnel, roof", stove.tunnel->roof);
    }
    add("riser", stove.riser.lining);
    if (stove.barrel) {
        add("barrel", stove.barrel->shell);
        if (!stove.barrel->jacket.empty()) add("barrel's jacket", stove.barrel->jacket);
    }
    for (const Fitting& fitting : stove.fittings) {
        if (const auto* oven = std::get_if<OvenTube>(&fitting))
            add("oven tube, " + oven->name, oven->wall);
        if (const auto* bell = std::get_if<Bell>(&fitting)) add("bell, " + bell->name, bell->wall);
    }
    for (const FlueSection& section : stove.flue.sections)
        add("flue, " + section.name, section.wall);
}

void add_flue_table(SheetFlow& flow, const Stove& stove) {
    if (stove.flue.sections.empty()) return;
    flow.heading("Flue, in the order the gas meets it");
    const std::vector<SheetColumn> columns{{2}, {3}, {3}, {3}, {2.6}, {1.6}};
    flow.row(columns, {"section", "length", "rise", "inside", "begins with", "place"}, true);
    for (const FlueSection& section : stove.flue.sections)
        flow.row(columns, {section.name, both_text(section.length), both_text(section.rise),
                           both_text(section.bore),
                           section.tee ? "a tee"
                           : section.entry_angle > 0
                               ? fmt::format("a bend of {:.0f} deg",
                                             number_in(section.entry_angle, "deg", Quantity::angle))
                               : "straight on",
                           section.outdoors ? "outdoors" : "indoors"});
}

void add_cut_list(SheetFlow& flow, const Stove& stove, const Library& library) {
    flow.heading("Cut list", 40);
    const std::vector<SheetColumn> columns{{3}, {1, end}, {2.5}, {2.7}, {1.9}, {2.3}};
    flow.row(columns, {"piece", "count", "mm", "inch", "of", ""}, true);
    for (const Piece& piece : cut_list(stove, library))
        flow.row(columns, {piece.part, std::to_string(piece.count), size_mm(piece),
                           size_inch(piece), spoken(piece.material), piece.note});
    for (const Rope& rope : ropes(stove))
        flow.row(columns, {"sealing rope, " + rope.place, "1", mm_text(rope.length) + " long",
                           show_inches(rope.length), "glass rope",
                           "10 mm is common (common practice, no source)"});
    flow.paragraph(
        "The last figure of a size is the thickness. Kerf, laps and play are not in it. The "
        "tunnel's sides, the riser and the wall behind the fire stand on the floor; the roof lies "
        "on the sides.");
}

void add_holes(SheetFlow& flow, const Stove& stove) {
    const std::vector<Hole> all = holes(stove);
    if (all.empty()) return;
    flow.heading("Holes");
    const std::vector<SheetColumn> columns{{2.6}, {0.8, end}, {2.2}, {2.4}, {3.6}};
    flow.row(columns, {"hole", "count", "mm", "inch", "where"}, true);
    for (const Hole& hole : all) {
        const bool round = hole.diameter > 0;
        flow.row(columns, {hole.what, std::to_string(hole.count),
                           round ? "diameter " + mm_text(hole.diameter)
                                 : sizes_mm({hole.width, hole.height}),
                           round ? "diameter " + show_inches(hole.diameter)
                                 : sizes_inch({hole.width, hole.height}),
                           hole.where});
    }
}

void add_materials(SheetFlow& flow, const Stove& stove, const Library& library) {
    flow.heading("Materials and masses", 30);
    const std::vector<SheetColumn> columns{{4.4},      {2.4},      {1.3, end},
                                           {1.4, end}, {1.6, end}, {1.6, end}};
    flow.row(columns, {"material", "thickness", "m2", "sq ft", "kg", "lb"}, true);
    double sum = 0;
    for (const Stock& stock : stock_for(cut_list(stove, library), library)) {
        flow.row(
            columns,
            {library.materials.at(stock.material).meaning, both_text(stock.thickness),
             three_digits(stock.face), three_digits(number_in(stock.face, "ft2", Quantity::area)),
             three_digits(stock.mass), three_digits(number_in(stock.mass, "lb", Quantity::mass))});
        sum += stock.mass;
    }
    flow.row(columns,
             {"together", "", "", "", three_digits(sum),
              three_digits(number_in(sum, "lb", Quantity::mass))},
             true);
    double rope = 0;
    for (const Rope& one : ropes(stove)) rope += one.length;
    if (rope > 0) flow.paragraph(fmt::format("Glass rope: {} in all.", both_text(rope)));
    for (const Load& load : stove.loads)
        flow.paragraph(fmt::format("Wood, load \"{}\": {} of {}, together {} ({}).", load.name,
                                   load.pieces, sizes_mm({load.side, load.side, load.length}),
                                   mass_text(load.mass), pounds_text(load.mass)));
    flow.paragraph(
        "Net, as cut: buy a tenth more of board, blanket and sheet (common practice, no source). "
        "What holds the stove up is not in it; its base carries all of this.");
}

}  // namespace drawwell

#pragma once

#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "cli/report/section/flue_way.h"
#include "cli/report/section/geometry.h"
#include "cli/report/sheet/cut_list.h"
#include "cli/report/sheet/plan_view.h"
#include "cli/report/sheet/section_measures.h"
#include "tests/cli/report/sheet/built_stove.h"

namespace drawwell::tests {

/// Heights beside the section and widths under it and beside the plan.
inline void compare_measures(const Built& built) {
    const Stove& stove = built.stove();
    const View view(section_extent(stove), {0, 0, 100, 100}, 20);
    std::map<std::string, double> height, along, across;
    for (const LedgerRow& row : section_heights(view, stove)) height[row.name] = row.length;
    for (const Span& span : section_widths(stove)) along[span.name] = span.to - span.from;
    for (const Span& span : plan_widths(stove)) across[span.name] = span.to - span.from;
    const GasPassageShape& riser = *built.passage("riser");
    const GasPassageShape *feed = built.passage("feed"), *tunnel = built.passage("tunnel"),
                          *turn = built.passage("turn"), *annulus = built.passage("annulus");
    const double axis = stove.axis_height();
    CHECK(height["top of the riser"] == doctest::Approx(axis + rise_of(riser)));
    if (feed) {
        CHECK(height["mouth of the feed"] == doctest::Approx(axis + length_of(*feed)));
        CHECK(are_sides(along["feed, inside"], across["feed, inside"], feed->cells.front()));
    }
    if (tunnel) {
        CHECK(along["feed's centre to riser's"] == doctest::Approx(length_of(*tunnel)));
        CHECK(are_sides(across["tunnel, inside"], height["tunnel roof, inside"],
                        tunnel->cells.back()));
        if (stove.tunnel->firebox_length > 0) {
            double firebox = 0;
            for (const GasCellShape& cell : tunnel->cells)
                if (cell.area == tunnel->cells.front().area) firebox += cell.length;
            CHECK(are_sides(across["firebox, inside"], height["firebox roof, inside"],
                            tunnel->cells.front()));
            if (tunnel->cells.front().area != tunnel->cells.back().area)
                CHECK(along["feed's centre to ledge"] == doctest::Approx(firebox));
        }
    }
    if (stove.riser.bore > 0) {
        const double inside = along["riser, inside"];
        CHECK(across["riser, inside"] == doctest::Approx(inside));
        CHECK((stove.riser.octagonal ? 2 * std::tan(constants::pi / 8) * inside * inside
                                     : disc(inside)) == doctest::Approx(riser.cells.front().area));
    } else {
        CHECK(are_sides(along["riser, inside"], across["riser, inside"], riser.cells.front()));
    }
    if (!turn || !annulus) return;
    CHECK(height["plate, underside"] ==
          doctest::Approx(height["top of the riser"] + turn->jet_gap));
    CHECK(across["plate"] == doctest::Approx(along["plate"]));
    CHECK(std::max(across["plate"], across["barrel, inside"]) ==
          doctest::Approx(2 * built.layout().plate_edge.back()));
    // A ring of which area and hydraulic diameter are known; an oven tube takes some of its area.
    double widest = 0;
    for (const GasCellShape& cell : annulus->cells) widest = std::max(widest, cell.area);
    const double gap = annulus->cells.front().hydraulic_diameter / 2;
    const double mean = widest / (constants::pi * gap);  // of both diameters
    CHECK(across["barrel, inside"] == doctest::Approx(mean + gap));
    CHECK(across["barrel, outside"] == doctest::Approx(stove.barrel->diameter));
    if (stove.riser.bore > 0 && !stove.riser.octagonal)
        CHECK(along["riser, outside"] == doctest::Approx(mean - gap));
    CHECK(height[gas_outlet(stove).name + ", centre"] ==
          doctest::Approx(stove.flue.sections.empty()     ? stove.outlet_height()
                          : flue_way(stove).bells.empty() ? built.layout().flue_starts[0].height
                                                          : stove.outlet_height()));
    if (stove.plate->hole)
        CHECK(*stove.plate->hole ==
              doctest::Approx(2 * built.layout().plate_edge[built.layout().hole_rings]));
}

/// Mass of all pieces whose names begin so [kg].
inline double mass_of(const std::vector<Piece>& all, std::string_view begin) {
    double sum = 0;
    for (const Piece& piece : all)
        if (piece.part.starts_with(begin))
            sum += piece.volume() * sheet_library().materials.at(piece.material).density;
    return sum;
}

/// Pieces against the masses that the burn heats, where the network has the same shape.
inline void compare_pieces(const Built& built) {
    const Stove& stove = built.stove();
    const std::vector<Piece> all = cut_list(stove, sheet_library());
    for (const FlueSection& section : stove.flue.sections)
        CHECK(mass_of(all, "flue, " + section.name) ==
              doctest::Approx(built.mass("flue." + section.name + ".")));
    if (stove.bypass) CHECK(mass_of(all, "bypass") == doctest::Approx(built.mass("bypass.")));
    for (const Fitting& fitting : stove.fittings)
        if (const auto* oven = std::get_if<OvenTube>(&fitting))
            CHECK(mass_of(all, "oven tube, " + oven->name) ==
                  doctest::Approx(built.mass("oven_tube." + oven->name + ".wall")));
    if (stove.barrel && stove.plate) {
        // Of the shell alone, of a barrel that hangs no lower than the network's riser begins; the
        // network may take ten millimetres more of it.
        const double barrel = built.mass("barrel.");
        if (stove.barrel->jacket.empty() && stove.barrel_foot() >= stove.axis_height())
            CHECK(mass_of(all, "barrel") ==
                  doctest::Approx(barrel).epsilon(0.0101 / stove.barrel->height));
        if (!stove.plate->hole && stove.plate->diameter >= barrel_inside(*stove.barrel) * 1.001)
            CHECK(mass_of(all, "cooking plate") == doctest::Approx(built.mass("plate.ring")));
    }
    const FlueWay way = flue_way(stove);
    for (const LevelPipe& pipe : way.connect) {
        double mass = 0;
        for (const Band& band : bands(*pipe.wall))
            mass +=
                constants::pi / 4 *
                (std::pow(pipe.bore + 2 * band.to, 2) - std::pow(pipe.bore + 2 * band.from, 2)) *
                pipe.length() * sheet_library().materials.at(band.layer->material).density;
        CHECK(mass_of(all, pipe.name) == doctest::Approx(mass));
    }
    // A hole lets the pipe through that its name says.
    for (const Hole& hole : holes(stove)) {
        CAPTURE(hole.what);
        if (hole.where.starts_with("barrel, centre")) {
            CHECK(hole.diameter == doctest::Approx(gas_outlet(stove).outer));
            if (stove.flue.sections.empty())
                CHECK(disc(hole.diameter) ==
                      doctest::Approx(built.passage("outlet")->losses.front().area));
        }
        for (std::size_t i = 0; i < way.connect.size(); ++i) {
            const LevelPipe& pipe = way.connect[i];
            if (pipe.into && hole.what == "into the bell, " + pipe.into->name)
                CHECK(hole.diameter == doctest::Approx(pipe.outer));
            if (i > 0 && way.connect[i - 1].into &&
                hole.what == "out of the bell, " + way.connect[i - 1].into->name)
                CHECK(hole.diameter == doctest::Approx(pipe.outer));
        }
    }
}

}  // namespace drawwell::tests

#pragma once

#include <doctest/doctest.h>

#include <set>

#include "cli/report/section/flue_way.h"
#include "cli/report/section/geometry.h"
#include "cli/report/section/outline.h"
#include "cli/report/sheet/gas_way.h"
#include "models/components/duct_shape.h"
#include "tests/cli/report/sheet/built_stove.h"

namespace drawwell::tests {

/// Gas areas and the network's openings, each held against the other.
inline void compare_areas(const Built& built) {
    const Stove& stove = built.stove();
    std::set<std::string> seen;
    for (const GasArea& area : gas_areas(stove)) {
        CAPTURE(area.name);
        const std::string own = after_comma(area.name);
        const auto same = [&](const std::string& passage, auto&& of) {
            const GasPassageShape* shape = built.passage(passage);
            REQUIRE(shape);
            CHECK(area.area == doctest::Approx(of(*shape)));
            seen.insert(passage);
        };
        const auto first_cell = [](const GasPassageShape& shape) {
            return shape.cells.front().area;
        };
        const auto last_cell = [](const GasPassageShape& shape) { return shape.cells.back().area; };
        const auto first_loss = [](const GasPassageShape& shape) {
            return shape.losses.front().area;
        };
        if (area.name == "feed, empty of wood")
            same("feed", first_cell);
        else if (area.name.starts_with("side air, "))
            same("side_air." + own, first_loss);
        else if (area.name.starts_with("air channel, "))
            same("air_channel." + own, first_cell);
        else if (area.name == "firebox")
            same("tunnel", first_cell);
        else if (area.name.starts_with("through the grid, "))
            same("tunnel", [&](const GasPassageShape& shape) {
                for (const Fitting& fitting : stove.fittings)
                    if (const auto* grid = std::get_if<Grid>(&fitting); grid && grid->name == own)
                        return grid->free_share() * shape.cells.front().area;
                return 0.0;
            });
        else if (area.name == "tunnel")
            same("tunnel", last_cell);
        else if (area.name == "port")
            same(stove.tunnel ? "tunnel"
                 : stove.feed ? "riser"
                              : "inlet",
                 [&](const GasPassageShape& shape) {
                     // The narrowest of what is lost at the tunnel's end, or in the opening itself.
                     double least = 1e9;
                     for (const LocalLoss& loss : shape.losses)
                         if (loss.forward > 0) least = std::min(least, loss.area);
                     return least;
                 });
        else if (area.name == "riser")
            same("riser", first_cell);
        else if (area.name == "opening under the plate")
            // A band as high as the gap round what the jet comes out of.
            same("turn", [&](const GasPassageShape& shape) {
                return riser_section(stove.riser).perimeter * shape.jet_gap;
            });
        else if (area.name == "space round the riser" ||
                 area.name.starts_with("past the oven tube, ")) {
            // The network takes the riser's outside for round; corners of an octagon or a
            // rectangle take more, which the sheet says.
            if (stove.riser.bore > 0 && !stove.riser.octagonal)
                same("annulus", [&](const GasPassageShape& shape) {
                    if (own.empty())
                        return std::accumulate(shape.cells.begin(), shape.cells.end(), 0.0,
                                               [](double most, const GasCellShape& cell) {
                                                   return std::max(most, cell.area);
                                               });
                    return area.area;
                });
            seen.insert("annulus");
        } else if (area.name == "open outlet")
            same("outlet", first_loss);
        else if (area.name == "bypass")
            same("bypass", first_cell);
        else if (area.name.starts_with("into the bell, "))
            same("bell." + own, first_loss);
        else if (area.name.starts_with("flue, "))
            same("flue." + own, first_cell);
        else
            FAIL_CHECK("nothing in the network is as this");
    }
    for (const std::string& passage : built.passages()) {
        CAPTURE(passage);
        const bool joint = passage.starts_with("leak.");  // no builder makes them on purpose
        const bool bare = passage == "inlet" || (passage == "outlet" && !stove.barrel);
        CHECK((joint || bare || seen.contains(passage)));
    }
}

inline void compare_volumes(const Built& built) {
    for (const GasVolume& part : gas_volumes(built.stove())) {
        CAPTURE(part.name);
        const std::string own = after_comma(part.name);
        if (part.name.starts_with("flue, "))
            CHECK(part.volume == doctest::Approx(volume_of(*built.passage("flue." + own))));
        else if (part.name.starts_with("bell, "))
            CHECK(part.volume == doctest::Approx(volume_of(*built.passage("bell." + own))));
        else if (part.name == "riser") {
            // The network's begins at the tunnel's axis, the wall stands on its floor.
            const GasPassageShape& riser = *built.passage("riser");
            const double below = built.stove().axis_height() - riser_stands_at(built.stove());
            CHECK(part.volume ==
                  doctest::Approx(volume_of(riser) + riser.cells.front().area * below));
        }
    }
}

/// The flue, bells and the pipes between them, as drawn.
inline void compare_flue(const Built& built) {
    const Stove& stove = built.stove();
    const FlueWay way = flue_way(stove);
    const GasOutlet outlet = gas_outlet(stove);
    if (stove.flue.sections.empty()) {
        CHECK(disc(outlet.bore) == doctest::Approx(built.passage("outlet")->losses.front().area));
        return;
    }
    REQUIRE(way.runs.size() == stove.flue.sections.size());
    for (std::size_t i = 0; i < way.runs.size(); ++i) {
        const FlueRun& run = way.runs[i];
        const GasPassageShape& shape = *built.passage("flue." + run.section->name);
        CHECK(run.length == doctest::Approx(length_of(shape)));
        CHECK(run.end().y - run.from.y == doctest::Approx(rise_of(shape)));
        CHECK(run.from.y == doctest::Approx(built.layout().flue_starts[i].height));
        CHECK(disc(2 * run.half) == doctest::Approx(shape.cells.front().area));
    }
    const BellCut* before = nullptr;
    std::size_t connectors = 0;
    for (const LevelPipe& pipe : way.connect) {
        CAPTURE(pipe.name);
        CHECK(pipe.length() > 0);
        if (!pipe.into) {
            CHECK(&pipe == &way.connect.back());
            CHECK(disc(pipe.bore) ==
                  doctest::Approx(
                      built.passage("flue." + stove.flue.sections.front().name)->cells[0].area));
            CHECK(pipe.from.y == doctest::Approx(built.layout().flue_starts[0].height));
            CHECK(pipe.from.x == doctest::Approx(before ? before->x2 : way.outlet.x));
            CHECK(pipe.to == doctest::Approx(way.runs.front().from.x));
            continue;
        }
        const BellCut& bell = way.bells[connectors++];
        const GasPassageShape& shape = *built.passage("bell." + pipe.into->name);
        CHECK(disc(pipe.bore) == doctest::Approx(shape.losses.front().area));
        CHECK(pipe.from.y == doctest::Approx(bell.y1 + pipe.into->inlet));
        CHECK(bell.y2 - bell.y1 == doctest::Approx(length_of(shape)));
        const double across = bell.x2 - bell.x1;
        CHECK(across * (pipe.into->diameter > 0 ? constants::pi / 4 * across : pipe.into->depth) ==
              doctest::Approx(shape.cells.front().area));
        // It begins where what stands before it ends.
        CHECK(pipe.from.x == doctest::Approx(before ? before->x2 : way.outlet.x));
        CHECK(pipe.to == doctest::Approx(bell.x1));
        before = &bell;
    }
    CHECK(connectors == way.bells.size());
    // What the section shows of it begins at the barrel, as wide as what leads on.
    for (const CutBlock& block : cut_outline(stove))
        if (block.part == CutPart::flue_gas && stove.barrel) {
            CHECK(block.y2 - block.y1 == doctest::Approx(outlet.bore));
            CHECK((block.y1 + block.y2) / 2 == doctest::Approx(stove.outlet_height()));
        }
    CHECK(disc(outlet.bore) ==
          doctest::Approx(
              way.bells.empty()
                  ? built.passage("flue." + way.runs.front().section->name)->cells[0].area
                  : built.passage("bell." + way.bells.front().bell->name)->losses[0].area));
    if (stove.bypass)
        CHECK(bypass_length(stove) == doctest::Approx(length_of(*built.passage("bypass"))));
}

}  // namespace drawwell::tests

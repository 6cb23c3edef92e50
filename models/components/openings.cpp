#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/parts.h"
#include "models/laws/losses.h"
#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

/// Where a leak meets the gas, and how high.
struct Joint {
    JunctionId junction{};
    double height = 0;  // [m]
};

Joint joint(const StoveBuilder& builder, LeakPlace place) {
    const Stove& stove = builder.stove;
    switch (place) {
        case LeakPlace::under_plate:
            return {builder.layout.under_plate, stove.plate->underside};
        case LeakPlace::flue_outlet:
            return {builder.layout.flue_outlet, stove.outlet_height()};
        case LeakPlace::tunnel:
            break;
    }
    return {builder.layout.riser_foot, stove.axis_height()};
}

/// Where the bypass joins the flue.
FlueStart bypass_end(const StoveBuilder& builder) {
    const auto& sections = builder.stove.flue.sections;
    const std::string& into = builder.stove.bypass->into;
    if (into.empty()) return {builder.layout.flue_outlet, builder.stove.outlet_height()};
    for (std::size_t s = 0; s < sections.size(); ++s)
        if (sections[s].name == into) return builder.layout.flue_starts[s];
    throw InputError("bypass.into: no flue section is called " + into);
}

}  // namespace

// The air of an opening is taken at the height of the axis, since what comes in between the two is
// room air. That it is hot gas where the flow turns is left out: a column that jumps with the
// direction has no steady state between.
void add_side_air(StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    for (const SideAir& air : stove.side_air) {
        const std::string name = "side_air." + air.name;
        const JunctionId around = builder.add_air_for_fire(name, air.outdoors);
        GasPassageShape hole = opening(air.area, hole_loss());
        if (air.duct_length > 0) {
            const DuctSection duct = round_section(std::sqrt(4 / constants::pi * air.area));
            hole.cells.front() = duct_cell(duct, air.duct_length, 0);
            hole.laminar_constant = duct.laminar_constant;
            hole.friction = true;
        }
        if (is_moved(stove.schedule.side_air, 1))
            hole.losses.push_back(
                {.area = air.area, .open = builder.add_open_share(stove.schedule.side_air)});
        builder.layout.side_air.push_back(
            builder.add_passage(name, around, builder.layout.hearth, std::move(hole), true));
    }
}

void add_bypass(StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    if (!stove.bypass || !stove.barrel) return;
    const FlueStart end = bypass_end(builder);
    const DuctSection duct = round_section(stove.bypass->bore);
    // From where the turn under the plate ends: it is level, at the riser's upper end.
    const double rise = end.height - stove.riser.top;
    GasPassageShape shape;
    shape.laminar_constant = duct.laminar_constant;
    // A wall, so that gas that hardly moves is as warm as the duct whichever way it goes.
    const std::size_t count = builder.cells(3);
    const double share = 1 / static_cast<double>(count);
    const double length = std::max(stove.bypass->length, std::abs(rise)) * share;
    OuterFace outside{.name = "bypass",
                      .solids = {},
                      .area = {},
                      .facing = Facing::upright_pipe,
                      .length = length / share,
                      .diameter = stove.bypass->bore + 2 * thickness(stove.barrel->shell)};
    for (std::size_t i = 0; i < count; ++i) {
        GasCellShape cell = duct_cell(duct, length, rise * share);
        const double area = duct.perimeter * length;
        const Wall wall = add_wall(builder, {.name = "bypass.wall." + std::to_string(i),
                                             .layers = stove.barrel->shell,
                                             .face_area = area,
                                             .face_radius = stove.bypass->bore / 2,
                                             .temperature = stove.site.room,
                                             .held_face = {}});
        cell.faces.push_back({index(wall.face), area, sooted_emissivity});
        shape.cells.push_back(std::move(cell));
        outside.solids.push_back(wall.back);
        outside.area.push_back(wall.back_area);
        outside.emissivity = wall.back_emissivity;
    }
    add_outer_face(builder, std::move(outside));
    shape.losses.push_back({.area = duct.area,
                            .forward = entrance_loss() + exit_loss(),
                            .reverse = entrance_loss() + exit_loss(),
                            .low_reynolds = low_reynolds_loss});
    shape.losses.push_back({.area = duct.area,
                            .low_reynolds = low_reynolds_loss,
                            .open = builder.add_open_share(stove.schedule.bypass)});
    builder.layout.bypass = builder.add_passage("bypass", builder.layout.under_plate, end.junction,
                                                std::move(shape), true);
}

void add_leaks(StoveBuilder& builder) {
    for (const Leak& leak : builder.stove.leaks) {
        const Joint at = joint(builder, leak.place);
        const std::string name = "leak." + leak.name;
        const JunctionId room = builder.add_room_air("room at " + name, at.height);
        builder.layout.leaks.push_back(
            builder.add_passage(name, room, at.junction, opening(leak.area, hole_loss()), true));
    }
}

}  // namespace drawwell

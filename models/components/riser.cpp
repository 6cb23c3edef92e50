#include <algorithm>
#include <utility>
#include <vector>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/parts.h"
#include "models/fouling.h"
#include "models/laws/losses.h"

namespace drawwell {
namespace {

/// Stretches of the riser by what is outside it: room below the barrel's foot, still gas below the
/// flue outlet, the space round the riser above.
struct Stretch {
    double from = 0, to = 0;  // [m] heights
    std::size_t count = 0;    // cells
    bool in_room = false;
};

constexpr double shortest_stretch = 0.01;  // [m] thinner cells would be all faces

std::vector<Stretch> stretches(const StoveBuilder& builder, double foot, double top) {
    const Stove& stove = builder.stove;
    if (!stove.barrel) return {{foot, top, builder.cells(8), true}};
    const double barrel_foot = std::max(foot, stove.barrel_foot());
    const double outlet = std::max(foot, stove.outlet_height());
    std::vector<Stretch> all;
    double from = foot;
    const auto add = [&](double to, double usual, bool in_room) {
        if (to - from < shortest_stretch) return;  // its neighbour takes it over
        all.push_back({from, to, builder.cells(usual), in_room});
        from = to;
    };
    add(barrel_foot, 2, true);
    add(outlet, 1, false);
    all.push_back({from, top, builder.cells(7), false});
    return all;
}

}  // namespace

void add_riser(StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    const Riser& riser = stove.riser;
    const DuctSection section = riser_section(riser);
    const double foot = stove.axis_height();

    GasPassageShape shape;
    shape.laminar_constant = section.laminar_constant;
    shape.roughness = sooted_roughness(shape.roughness, riser.soot);
    BuildUp in_room = riser.lining;
    if (stove.barrel && stove.barrel->soot > 0) in_room.pop_back();  // no soot outside the barrel
    OuterFace outside{.name = "riser", .solids = {}, .area = {}, .length = riser.top - foot};
    for (const Stretch& stretch : stretches(builder, foot, riser.top)) {
        const double length = (stretch.to - stretch.from) / static_cast<double>(stretch.count);
        for (std::size_t i = 0; i < stretch.count; ++i) {
            GasCellShape cell = duct_cell(section, length, length);
            const double height = stretch.from + (static_cast<double>(i) + 0.5) * length;
            const double area = section.perimeter * length;
            const Wall wall = add_wall(
                builder,
                {.name = "riser.wall." + std::to_string(builder.layout.riser_skin.solids.size()),
                 .layers = stretch.in_room ? in_room : riser.lining,
                 .face_area = area,
                 .face_radius = section.equivalent_radius(),
                 .temperature = stove.site.room,
                 .held_face = riser.wall_temperature});
            cell.faces.push_back({index(wall.face), area, wall.face_emissivity});
            shape.cells.push_back(std::move(cell));
            builder.layout.riser_inside.solids.push_back(wall.face);
            builder.layout.riser_inside.position.push_back(height);
            builder.layout.riser_skin.solids.push_back(wall.back);
            builder.layout.riser_skin.position.push_back(height);
            builder.layout.riser_gas_height.push_back(height);
            if (stretch.in_room) {
                outside.solids.push_back(wall.back);
                outside.area.push_back(wall.back_area);
                outside.emissivity = wall.back_emissivity;
            }
        }
    }
    if (!outside.solids.empty()) add_outer_face(builder, std::move(outside));
    builder.layout.riser_area = section.area;
    builder.layout.riser_end = builder.add_junction("riser top");
    builder.layout.riser = builder.add_passage("riser", builder.layout.riser_foot,
                                               builder.layout.riser_end, std::move(shape));
    builder.layout.outlet = builder.layout.riser_end;
}

}  // namespace drawwell

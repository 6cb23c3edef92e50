#include <cmath>
#include <utility>
#include <vector>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/parts.h"
#include "models/components/under_plate.h"
#include "models/laws/losses.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

void divide(std::vector<double>& edges, double to, std::size_t count) {
    const double from = edges.back();
    for (std::size_t i = 1; i <= count; ++i)
        edges.push_back(from + (to - from) * static_cast<double>(i) / static_cast<double>(count));
}

}  // namespace

void add_plate(StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    if (!stove.barrel) return;
    const Plate& plate = *stove.plate;
    const DuctSection riser = riser_section(stove.riser);
    const double bore = 2 * riser.equivalent_radius();
    const double skin = bore / 2 + thickness(stove.riser.lining);
    const double inner = stove.barrel->diameter / 2 - thickness(stove.barrel->shell);
    const double rim = std::max(plate.diameter / 2, inner);

    // Rings: two within the jet, one over the riser's wall, five out to the barrel, the overhang.
    std::vector<double> edges{0};
    divide(edges, bore / 2, builder.cells(2));
    divide(edges, skin, builder.cells(1));
    divide(edges, inner, builder.cells(5));
    const std::size_t under = edges.size() - 1;
    if (rim > inner * 1.001) edges.push_back(rim);

    std::vector<SolidId> rings;
    OuterFace top{.name = "plate",
                  .solids = {},
                  .area = {},
                  .emissivity = builder.material(plate.material).emissivity,
                  .facing = Facing::up,
                  .length = plate.diameter,
                  .cover = stove.schedule.plate_cover,
                  .cover_resistance = plate.cover_resistance};
    for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
        const double area = pi * (edges[i + 1] * edges[i + 1] - edges[i] * edges[i]);
        rings.push_back(builder.add_solid("plate.ring." + std::to_string(i), plate.material,
                                          area * plate.thickness, stove.site.room));
        const double node = (edges[i] + edges[i + 1]) / 2;
        builder.layout.plate.position.push_back(node);
        if (i > 0) {
            const double before = builder.layout.plate.position[i - 1];
            builder.network.links.push_back(
                {.a = rings[i - 1],
                 .b = rings[i],
                 .shape_a = 2 * pi * plate.thickness / std::log(edges[i] / before),
                 .shape_b = 2 * pi * plate.thickness / std::log(node / edges[i])});
        }
        top.solids.push_back(rings[i]);
        top.area.push_back(i < under ? area : 2 * area);  // an overhang loses heat downwards too
    }
    add_outer_face(builder, std::move(top));
    builder.layout.plate.solids = rings;
    builder.layout.plate_edge = edges;

    const double gap = plate.underside - stove.riser.top;
    GasPassageShape shape;
    shape.film = Film::jet;
    shape.friction = false;
    shape.film_length = bore;
    shape.jet_gap = gap;
    shape.jet_area = riser.area;
    for (std::size_t i = 0; i < under; ++i) {
        const double middle = (edges[i] + edges[i + 1]) / 2;
        const double area = pi * (edges[i + 1] * edges[i + 1] - edges[i] * edges[i]);
        GasCellShape cell{.length = edges[i + 1] - edges[i],
                          .rise = 0,
                          .area = 2 * pi * middle * gap,
                          .hydraulic_diameter = 2 * gap,
                          .beam_length = 1.8 * gap,  // slab: Hottel, from memory
                          .radius = middle,
                          .faces = {}};
        cell.faces.push_back({index(rings[i]), area, builder.material(plate.material).emissivity});
        shape.cells.push_back(std::move(cell));
    }
    shape.losses.push_back({.area = shape.jet_area,
                            .forward = turn_under_plate_loss(gap / bore),
                            .reverse = turn_under_plate_loss(gap / bore),
                            .low_reynolds = low_reynolds_loss});
    const JunctionId above = builder.layout.riser_end;
    builder.layout.outlet = builder.layout.under_plate = builder.add_junction("barrel top");
    builder.layout.turn =
        builder.add_passage("turn", above, builder.layout.outlet, std::move(shape));
}

}  // namespace drawwell

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/parts.h"
#include "models/components/under_plate.h"
#include "models/fittings/lump.h"
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

/// Sets an edge at a radius and tells how many rings lie within it.
std::size_t cut(std::vector<double>& edges, double radius) {
    const auto at = std::lower_bound(edges.begin(), edges.end(), radius - 1e-6);
    const auto inside = static_cast<std::size_t>(at - edges.begin());
    if (*at > radius + 1e-6) edges.insert(at, radius);
    return inside;
}

/// Where a ring's heat crosses into the next one out.
struct Crossover {
    double node = 0, edge = 0, next = 0;   // [m] radii
    double thickness = 0, next_thick = 0;  // [m]
};

ConductionLink spreading(SolidId ring, SolidId next, const Crossover& at) {
    return {.a = ring,
            .b = next,
            .shape_a = 2 * pi * at.thickness / std::log(at.edge / at.node),
            .shape_b = 2 * pi * at.next_thick / std::log(at.next / at.edge)};
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
    // What lies in a hole is a cover, or the bottom of the pot over it.
    const std::size_t in_hole = plate.hole ? cut(edges, *plate.hole / 2) : 0;
    const Pot* pot = pot_over_hole(stove);
    builder.layout.hole_rings = in_hole;
    if (pot) builder.layout.hole_pot = pot->name;
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
        const bool is_pot = pot && i < in_hole;
        const double thick = i < in_hole && !pot ? *plate.hole_cover : plate.thickness;
        const std::string number = std::to_string(i);
        rings.push_back(is_pot
                            ? add_lump(builder, {.name = "pot." + pot->name + ".bottom." + number,
                                                 .mass = area * pot_bottom_mass,
                                                 .heat_capacity = pot_heat_capacity})
                            : builder.add_solid("plate.ring." + number, plate.material,
                                                area * thick, stove.site.room));
        const double node = (edges[i] + edges[i + 1]) / 2;
        builder.layout.plate.position.push_back(node);
        // A pot's bottom hands its heat to the water and none to the plate round it.
        if (i > 0 && !(pot && i <= in_hole)) {
            const bool at_cover = i == in_hole;
            const double before = at_cover ? *plate.hole_cover : thick;
            builder.network.links.push_back(
                spreading(rings[i - 1], rings[i],
                          {builder.layout.plate.position[i - 1], edges[i], node, before, thick}));
            if (at_cover)
                builder.network.links.back().contact =
                    1 / (seat_conductance * 2 * pi * edges[i] * seat_width);
        }
        top.solids.push_back(rings[i]);
        // An overhang loses heat downwards too.
        top.area.push_back(is_pot ? 0 : i < under ? area : 2 * area);
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

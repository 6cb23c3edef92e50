#include "validation/plate_rings.h"

#include <algorithm>
#include <utility>

#include "cli/read/read_library.h"
#include "models/components/parts.h"
#include "solver/constants.h"

namespace drawwell {

double LaidPlate::area(std::size_t ring) const {
    return constants::pi * (edge[ring + 1] * edge[ring + 1] - edge[ring] * edge[ring]);
}

void LaidPlate::hold(std::size_t ring, double temperature) {
    Solid& solid = bench.network.solids[index(rings[ring])];
    solid.held = true;
    solid.initial_temperature = temperature;
    for (ConductionLink& link : bench.network.links) {
        if (link.a == rings[ring]) link.shape_a = 1e9;
        if (link.b == rings[ring]) link.shape_b = 1e9;
    }
}

LaidPlate lay_plate(const PlateRings& plate, double temperature) {
    Library library = read_library();
    library.materials["plate"] = {.name = "plate",
                                  .meaning = "",
                                  .density = 7850,
                                  .conductivity = Table(plate.conductivity),
                                  .heat_capacity = Table(500.0),
                                  .hazard = "",
                                  .source = ""};
    library.materials["lining"] = library.materials["plate"];
    Stove stove;
    stove.site.room = temperature;
    stove.burn.refine = plate.refine;
    stove.riser.bore = 2 * plate.bore_radius;
    stove.riser.lining = {{"lining", plate.skin}};
    stove.riser.top = 0.7;
    stove.barrel = Barrel{.diameter = 2 * plate.radius, .height = 0.5, .shell = {}};
    stove.plate = Plate{.diameter = 2 * plate.radius * (plate.overhang ? 1.05 : 1),
                        .thickness = plate.thickness,
                        .underside = 0.75,
                        .material = "plate"};
    const SolidFuel fuel{.wood = library.woods.begin()->second,
                         .char_yield = library.bed.char_yield.value};
    StoveBuilder builder(stove, library, fuel);
    builder.layout.riser_end = builder.add_junction("riser top");
    add_plate(builder);
    LaidPlate laid;
    laid.bench.network.solids = std::move(builder.network.solids);
    laid.bench.network.links = std::move(builder.network.links);
    laid.rings = builder.layout.plate.solids;
    laid.edge = builder.layout.plate_edge;
    laid.node = builder.layout.plate.position;
    while (laid.edge[laid.over_bore] < plate.bore_radius - 1e-9) ++laid.over_bore;
    return laid;
}

}  // namespace drawwell

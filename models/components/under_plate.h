#pragma once

#include <vector>

#include "models/components/stove_builder.h"

namespace drawwell {

/// The flat space between riser and plate as surfaces that see each other: below, the riser's
/// mouth, its rim and the space round the riser; above, the plate over each; round it the barrel.
struct UnderPlate {
    double bore_radius = 0, skin_radius = 0, barrel_radius = 0;  // [m]
    double gap = 0;                                              // [m]
    std::vector<SolidId> rings;                                  // of the plate
    std::vector<double> ring_edge;                               // [m] radii, one more than rings
    double plate_emissivity = 0;
    SolidId mouth{}, rim{}, barrel{};  // riser's upper lining, its skin, the barrel's top
    SolidId below{};                   // barrel wall that the open space round the riser shows
    double rim_emissivity = 0, barrel_emissivity = 0;
};

/// Adds the radiation among them. Mouth and open space count as black.
void add_under_plate_radiation(StoveBuilder& builder, const UnderPlate& space);

}  // namespace drawwell

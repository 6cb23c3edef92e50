#pragma once

#include <vector>

#include "validation/bench.h"

namespace drawwell {

/// A cooking plate of constant properties in the rings that the stove's own plate is laid in.
struct PlateRings {
    double bore_radius = 0.0625;  // [m] of the riser under its middle
    double skin = 0.025;          // [m] of the riser's wall
    double radius = 0.2;          // [m] of the barrel under it
    double thickness = 0.005;     // [m]
    double conductivity = 40;     // [W/(m K)]
    double refine = 1;            // [-] multiplies the number of rings
    bool overhang = false;        // with a ring beyond the barrel
};

/// The rings on a bench, and where they stand.
struct LaidPlate {
    Bench bench;
    std::vector<SolidId> rings;
    std::vector<double> edge, node;  // [m] radii; one more edge than rings
    std::size_t over_bore = 0;       // rings over the riser's bore

    double area(std::size_t ring) const;  // [m2] of one face
    /// Keeps a ring at a temperature [K] right up to its edge.
    void hold(std::size_t ring, double temperature);
};

LaidPlate lay_plate(const PlateRings& plate, double temperature);

}  // namespace drawwell

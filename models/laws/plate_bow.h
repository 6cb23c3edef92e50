#pragma once

#include <span>

namespace drawwell {

/// A round plate that heat may bow.
struct BowingPlate {
    double radius = 0;     // [m]
    double thickness = 0;  // [m]
    double expansion = 0;  // [1/K] linear
    bool clamped = false;  // its rim can't turn; else it lies free
};

/// How warm it is, ring by ring from the centre.
struct PlateWarmth {
    std::span<const double> edge;         // [m] radii of the rings' edges from 0 on
    std::span<const double> temperature;  // [K] of each ring, one fewer
    double through = 0;                   // [K] underside over top
};

/// Middle over rim [m]: positive, it domes; negative, it dishes. The larger bow is `high`, with a
/// rim that can't grow beside a middle that does; `low` is with one that slides.
struct BowBand {
    double low = 0, high = 0;
};

/// How far the plate is on its way to buckling [-]: its squeeze over the one at which a flat plate
/// gives way. The squeeze is what its own colder outer rings put on its middle, by plane elasticity
/// from its temperatures; a rim that can't grow (`rigid_rim`) adds that of a plate grown by its
/// mean warmth over the rim's against it. Ritz's method on a dish, 1 - (r/a)^2, or with a clamped
/// rim its square, set right by the exact factors of an even squeeze: 4.2 and 14.68 (Timoshenko and
/// Gere, from memory). So an evenly warm disc in a cold rigid rim gives way K (t/a)^2 / (12 (1 +
/// nu) alpha) over it. Steel: nu 0.3. Negative where the rim is the warmer.
double buckling_share(const BowingPlate& plate, const PlateWarmth& warmth, bool rigid_rim);

/// The bow of an elastic plate that was flat: (1 - s) w + A w^3/t^2 = w_0, with s as above and w_0
/// = alpha dT a^2/(2 t) the bow by the heat through it, which also says which way; none of that
/// where the rim is clamped. A (Timoshenko and Woinowsky-Krieger, table 82, from memory): 0.262
/// free, 0.146 clamped where the rim slides, 1.852 and 0.471 where it can't. Creep, rolling stress
/// and a plate's history are left out: below some 400 degC, bows of a few thicknesses at most.
BowBand plate_bow(const BowingPlate& plate, const PlateWarmth& warmth);

}  // namespace drawwell

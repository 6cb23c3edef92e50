#pragma once

#include <string>

namespace drawwell {

/// Wood put in together: one load, or the kindling. It stands on its feet in the fire and sinks as
/// it burns, so the fire has as much of it until the last has come down.
struct FuelLot {
    std::string name;
    std::size_t site = 0;
    double dry_mass = 0;            // [kg] without ash
    double moisture_dry_basis = 0;  // [-]
    double ash = 0;                 // [-] of dry_mass, besides it
    double lit_area = 0;            // [m2] while the fire has enough of the pieces
    double section = 0;             // [m2] taken from the feed likewise
    double foot_share = 1;          // [-] of a whole piece, its foot, that stands in the fire
    bool lit_by_hand = false;       // at the start

    /// What is left of it [-] with so much dry wood [kg].
    double share_left(double wood) const;
    /// What is left at the foot [-].
    double foot_left(double wood) const;
    double lit_area_left(double wood) const;  // [m2]
    double section_left(double wood) const;   // [m2]
    /// Share of what is left that is lost each second [1/s], at a rate [kg/s] that dies away with
    /// the last splinters, and the rate itself [kg/s].
    double losing_share(double rate, double wood) const;
    double losing(double rate, double wood) const;
    /// Slope of `losing` over the wood left [1/s].
    double losing_slope(double rate, double wood) const;
};

/// Lit perimeter [m] of square pieces of that side that stand apart, every side of each, or in a
/// bundle, as near square as they pack: the outside of it alone.
double perimeter_apart(int pieces, double side);
double perimeter_bundled(int pieces, double side);

}  // namespace drawwell

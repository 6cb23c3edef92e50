#pragma once

#include <vector>

namespace drawwell {

/// A closed space of gray, diffuse surfaces.
struct Enclosure {
    std::vector<double> area;         // [m2] of each surface
    std::vector<double> emissivity;   // [-] 0..1; 0 is a perfect mirror or a reradiating wall
    std::vector<double> view_factor;  // [-] row-major: of what leaves i, the share that meets j
};

/// Exchange areas G [m2], row-major and symmetric: net heat from i is
/// sigma * sum over j of G_ij (T_i^4 - T_j^4).
/// InputError: sizes differ, areas not positive, emissivities outside 0..1 or all zero, a view
/// factor negative, a row not summing to one, or reciprocity A_i F_ij = A_j F_ji broken (1e-6).
std::vector<double> exchange_areas(const Enclosure& enclosure);

/// View factor [-] from disc 1 to disc 2, parallel and on one axis; radii and distance in m, radii
/// > 0, distance >= 0.
double coaxial_discs(double radius_1, double radius_2, double distance);

/// View factor [-] between two equal, opposite rectangles of those sides, a distance apart; all in
/// m, sides > 0, distance >= 0. Howell's catalogue, from memory.
double parallel_rectangles(double width, double height, double distance);

/// View factor [-] from a rectangle `width` x `height` to one of `width` x `depth` square to it,
/// with the width as their common edge; all in m, width and height > 0, depth >= 0. Howell's
/// catalogue, from memory.
double perpendicular_rectangles(double width, double height, double depth);

/// Exchange area [m2] of a convex body inside another (long cylinders; areas per the same length).
double concentric_exchange(double area_inner, double area_outer, double emissivity_inner,
                           double emissivity_outer);

/// Exchange area [m2] of two large parallel plates of the same area.
double parallel_plates_exchange(double area, double emissivity_1, double emissivity_2);

}  // namespace drawwell

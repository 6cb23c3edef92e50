#pragma once

#include <string>
#include <vector>

#include "models/library.h"

namespace drawwell {

/// A slab of wood under a cone heater: lit on one face, its back on ceramic.
struct ConeSlab {
    std::string wood;
    double density = 0;    // [kg/m3] as tested
    double thickness = 0;  // [m]
    double moisture = 0;   // [-] share of the whole
    double flux = 0;       // [W/m2] from the heater
};

/// Heat set free [W/m2] by that slab each ten seconds up to `end` [s], by the program's fuel bed in
/// plenty of air, counted as the apparatus does: 13.1 MJ for each kilogram of oxygen used.
std::vector<double> cone_release(const ConeSlab& slab, double end, const Library& library);

/// Mean of a series of ten-second values between two times [s].
double mean_between(const std::vector<double>& series, double from, double to);

/// The three figures a record is judged by: mean over the whole of it, mean of the plateau between
/// the first peak and the second, which comes when the heat has reached the back (300 to 600 s),
/// and the highest of the first five minutes [kW/m2].
std::vector<double> cone_figures(const std::vector<double>& series);

}  // namespace drawwell

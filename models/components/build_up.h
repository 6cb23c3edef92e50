#pragma once

#include <string>
#include <vector>

namespace drawwell {

/// One layer of a wall; a build-up lists them from the gas outwards.
struct Layer {
    std::string material;
    double thickness = 0;  // [m]
};
using BuildUp = std::vector<Layer>;

/// Thickness of all layers together [m].
inline double thickness(const BuildUp& wall) {
    double sum = 0;
    for (const Layer& layer : wall) sum += layer.thickness;
    return sum;
}

}  // namespace drawwell

#pragma once

#include <string>
#include <vector>

#include "models/stove.h"

namespace drawwell {

/// An opening or duct that the gas goes through.
struct GasArea {
    std::string name;
    double area = 0;     // [m2]
    double share = 0;    // [-] of the riser's inner section
    bool aside = false;  // side air, a bypass: beside the main way
};

/// Every one, in the order the gas meets them.
std::vector<GasArea> gas_areas(const Stove& stove);

/// The narrowest of the main way; it throttles. Null: there is none.
const GasArea* narrowest(const std::vector<GasArea>& areas);

struct GasVolume {
    std::string name;
    double volume = 0;  // [m3]
};

/// What stands full of gas or wood, part by part.
std::vector<GasVolume> gas_volumes(const Stove& stove);

}  // namespace drawwell

#pragma once

#include <map>
#include <string>

#include "models/components/build_up.h"
#include "models/fire/bed_constants.h"
#include "models/fire/wood.h"
#include "models/materials/material.h"

namespace drawwell {

/// How much a day and its wood differ from another, one standard deviation.
struct DaySpread {
    double outdoor = 0;        // [K] of the outdoor temperature
    double pressure = 0;       // [-] of the air's pressure, relative
    double wood_moisture = 0;  // [-] of the wood's moisture, relative
};

/// Every table of data/, read.
struct Library {
    std::map<std::string, Material> materials;
    std::map<std::string, Wood> woods;
    std::map<std::string, BuildUp> build_ups;  // of several layers, from the gas outwards
    BedConstants bed;
    DaySpread day;
};

}  // namespace drawwell

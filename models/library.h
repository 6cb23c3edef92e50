#pragma once

#include <map>
#include <string>

#include "models/components/build_up.h"
#include "models/fire/bed_constants.h"
#include "models/fire/wood.h"
#include "models/materials/material.h"

namespace drawwell {

/// Every table of data/, read.
struct Library {
    std::map<std::string, Material> materials;
    std::map<std::string, Wood> woods;
    std::map<std::string, BuildUp> build_ups;  // of several layers, from the gas outwards
    BedConstants bed;
};

}  // namespace drawwell

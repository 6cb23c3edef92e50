#pragma once

#include <map>
#include <string>

#include "models/fire/bed_constants.h"
#include "models/fire/wood.h"
#include "models/materials/material.h"

namespace drawwell {

/// Every table of data/, read.
struct Library {
    std::map<std::string, Material> materials;
    std::map<std::string, Wood> woods;
    BedConstants bed;
};

}  // namespace drawwell

#pragma once

#include <optional>
#include <string>

#include "solver/table.h"

namespace drawwell {

/// What a layer is made of.
struct Material {
    std::string name;                     // `vermiculite_board`
    std::string meaning;                  // what a builder calls it
    double density = 0;                   // [kg/m3]
    Table conductivity;                   // [W/(m K)] against temperature [K]
    Table heat_capacity;                  // [J/(kg K)] against temperature [K]
    double emissivity = 0.9;              // [-] total hemispherical
    std::optional<Table> expansion = {};  // [1/K] linear, against temperature [K]; none: not known
    double hot_face_limit = 0;            // [K] hottest face it is sold for; 0: not given
    double conductivity_spread = 0.2;     // [-] one standard deviation, relative
    double emissivity_spread = 0.1;       // [-] the same of emissivity
    std::string hazard;  // what it does to people or to the stove; empty: nothing known
    std::string source;  // where the figures come from, with their mark
};

}  // namespace drawwell

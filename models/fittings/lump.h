#pragma once

#include <string>

#include "models/components/stove_builder.h"

namespace drawwell {

/// A body of one temperature that is no wall: water in a pot, food in an oven.
struct Lump {
    std::string name;
    double mass = 0;           // [kg]
    double heat_capacity = 0;  // [J/(kg K)]
};

/// Adds it, as warm as the room and joined to nothing.
SolidId add_lump(StoveBuilder& builder, const Lump& lump);

}  // namespace drawwell

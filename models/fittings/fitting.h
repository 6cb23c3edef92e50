#pragma once

#include <variant>

#include "models/fittings/air_channel.h"
#include "models/fittings/bell.h"
#include "models/fittings/damp.h"
#include "models/fittings/grid.h"
#include "models/fittings/griddle.h"
#include "models/fittings/oven_tube.h"
#include "models/fittings/pot.h"
#include "models/fittings/window.h"

namespace drawwell {

/// What a stove can be fitted with. Each is a file of its own and is said only here and in the list
/// of keys; columns, network and answers follow.
using Fitting = std::variant<Pot, Griddle, OvenTube, Window, Grid, AirChannel, Bell, Damp>;

}  // namespace drawwell

#pragma once

#include <optional>

#include "models/library.h"
#include "models/stove.h"

namespace drawwell {

/// What the gas would do before anything burns.
enum class Leaning { falls, stands, rises };

/// A stove before it is lit: both directions are possible then, and the sign of what little column
/// there is decides.
struct ColdStart {
    double column = 0;  // [Pa] of all gas at rest, towards the flue
    Leaning leaning = Leaning::stands;
    double priming = 0;  // [Pa] wanted to turn it towards the flue; 0: none
    /// Kindling [s] burned where the stove says until the feed takes in air to stay. Nothing: it
    /// does not within the time watched, or no kindling is lit.
    std::optional<double> kindling;
};

/// Looks at the stove as it stands before lighting, then lights the kindling alone and watches.
/// Errors as `run_burn`.
ColdStart cold_start(const Stove& stove, const Library& library);

}  // namespace drawwell

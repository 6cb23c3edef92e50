#pragma once

#include <string>
#include <vector>

#include "cli/study/condition.h"
#include "cli/study/run_rows.h"

namespace drawwell {

/// A single change that a builder may try, in plain words, and how it is set.
struct Remedy {
    std::string what;  // `flue 500 mm higher`
    Variant variant;
};

/// Changes to a stove against a draw that is too weak, the cheapest first (our choice): smaller
/// loads, a wider opening under the plate, a wider port, a higher flue, a warmer flue, a bypass.
/// What the stove has no part for is left out.
std::vector<Remedy> remedies_for(const Stove& stove);

}  // namespace drawwell

#pragma once

// What the header of every kind of fitting speaks of.

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "models/columns.h"

namespace drawwell {

class StoveBuilder;
struct FittingAnswer;
struct FittingProblem;
struct Results;
struct Stove;

}  // namespace drawwell

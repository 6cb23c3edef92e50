#pragma once

#include <span>
#include <string>

#include "solver/results.h"

namespace drawwell {

/// The part of a burn that was asked for: columns by name (`drive`), all their cells, or one of
/// them by its label in tables (`plate_temperature[0.105m]`), in the order asked; no names: all.
/// With `every` [s] over 0, only the first instant at or after each multiple of it; the last stays.
/// No value is made up between instants. InputError: there is no such column or cell.
Results choose_columns(const Results& results, std::span<const std::string> names,
                       double every = 0);

}  // namespace drawwell

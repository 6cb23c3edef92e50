#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "cli/read/units.h"

namespace drawwell {

/// The SI value of a key in a formula. InputError: it has none.
using ValueOfKey = std::function<double(const std::string& key)>;

/// Works out a formula whose figures carry units, `riser.top + 45mm`: key names stand for their
/// values, numbers without a unit are factors, exponents and the like. InputError with the reason:
/// it can't be read, an unknown key, a figure without its unit (`riser.top + 45`), or it comes to
/// another quantity than the one wanted.
double work_out(std::string_view formula, Quantity wanted, const ValueOfKey& value_of);

}  // namespace drawwell

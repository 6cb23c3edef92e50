#pragma once

#include <string>

namespace drawwell {

/// Burns a sample of data/stoves by drawwell's own stepper, at its default tolerance and tighter
/// ones, and compares walls, fuel and flows with the case's reference, another integrator of the
/// same right-hand side. Where the laws were changed since the reference was made, by which it says
/// nothing of the stepper any more, it only shows that. `limit` [-]: most that a wall or the fuel
/// may be off, of its span.
void check_same_equations(const std::string& name, const std::string& sample, double limit);

}  // namespace drawwell

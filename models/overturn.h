#pragma once

#include <functional>

namespace drawwell {

class March;
struct BuiltStove;

/// Flow [kg/s] that a fire at the foot of a riser or flue sets up by itself where cold gas comes
/// down onto it; 0 where none does, or too fast to be turned: above Fr = 0.25, at which exchange
/// surely begins (`exchange.h`). That is also the flow with which the hot gas then rises.
std::function<double(const March& march)> overturning(const BuiltStove& built);

}  // namespace drawwell

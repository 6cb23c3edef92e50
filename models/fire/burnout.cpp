#include "models/fire/burnout.h"

#include <cmath>
#include <limits>

#include "solver/constants.h"

namespace drawwell {

double carbon_monoxide_time(const BurnoutGas& gas) {
    constexpr double rate = 1.3e14;                  // [cm3/(mol s)]
    constexpr double activation = 30000 / 1.987204;  // [K]
    if (!(gas.oxygen > 0) || !(gas.water > 0)) return std::numeric_limits<double>::infinity();
    const double moles = gas.pressure / (constants::molar_gas * gas.temperature) * 1e-6;  // per cm3
    const double share = rate * moles * std::sqrt(gas.oxygen * gas.water) *
                         std::exp(-activation / gas.temperature);  // [1/s] of the monoxide
    constexpr double never = 1e-300;                               // [1/s] has no inverse
    return share > never ? 1 / share : std::numeric_limits<double>::infinity();
}

}  // namespace drawwell

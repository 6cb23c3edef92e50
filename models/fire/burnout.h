#pragma once

#include "models/laws/range.h"

namespace drawwell {

/// Gas in which carbon monoxide burns.
struct BurnoutGas {
    double temperature = 0;  // [K]
    double pressure = 0;     // [Pa]
    double oxygen = 0;       // [-] volume share
    double water = 0;        // [-] volume share
};

/// Time constant [s] in which carbon monoxide burns out. Howard, Williams and Fine 1973, from
/// memory: d[CO]/dt = -1.3e14 [CO] [H2O]^0.5 [O2]^0.5 exp(-30000/(R T)) in cm3, mol, s and cal;
/// 840 to 2360 K. Infinite without oxygen or water.
double carbon_monoxide_time(const BurnoutGas& gas);
/// No uncertainty: no answer hangs on it.
inline constexpr Range carbon_monoxide_range{"burnout of CO", "temperature", "K", 840, 2360, 0};

}  // namespace drawwell

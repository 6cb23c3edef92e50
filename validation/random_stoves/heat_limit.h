#pragma once

#include "models/gas/gas_model.h"

namespace drawwell {

/// How hot the things are that a gas was made of [K].
struct Preheat {
    double walls = 0;  // the hottest wall or air: dry air and the wood's water, as steam
    double fuel = 0;   // the fuel's surface: what the wood gives off, if it is hotter than walls
};

/// Temperature [K] that no gas of this composition can pass without heat from outside.
///
/// Its elements say what it was made of: all nitrogen came with dry air, and what carbon, hydrogen
/// and oxygen are left are volatiles, water and char in one way only. These are taken as hot as
/// they can be, the char as the books have it, without heat of its own, and what can still burn is
/// burnt as far as the oxygen goes: carbon monoxide before volatiles or after, whichever makes the
/// gas hotter. (For given enthalpy, gas hotter than some temperature fills a half of the plane of
/// how far each is burnt, so the hottest of all is at a corner.)
/// InputError: the volatiles are carbon and water, and cannot be told from them.
double hottest_gas(const GasModel& model, const Composition& mass_fraction, const Preheat& preheat);

}  // namespace drawwell

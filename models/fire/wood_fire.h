#pragma once

#include <span>

#include "solver/fire.h"

namespace drawwell {

/// A fire as a burn's report sees it.
class WoodFire : public Fire {
  public:
    /// Heat [J], higher heating value, that the fuel still holds, up to a constant.
    virtual double heating_value(std::span<const double> fuel) const = 0;
    /// Dry wood [kg] and char [kg] there, up to a constant.
    virtual double dry_wood(std::span<const double> fuel) const = 0;
    virtual double char_left(std::span<const double> fuel) const = 0;
    /// Rate [kg/s] at which dry wood is lost.
    virtual double pyrolysis(double time, std::span<const double> fuel) const = 0;
    /// Heat [W] given to the gas without burning.
    virtual double plain_heat(double) const { return 0; }
};

}  // namespace drawwell

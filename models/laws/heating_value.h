#pragma once

namespace drawwell {

/// Mass fractions [-] of dry wood.
struct WoodAnalysis {
    double carbon = 0, hydrogen = 0, oxygen = 0, nitrogen = 0, ash = 0;
};

/// Higher heating value [J/kg] of dry wood; Channiwala and Parikh, Fuel 81 (2002) 1051, without its
/// sulphur term; mean error 1.45 %.
double wood_heating_value(const WoodAnalysis& dry);

}  // namespace drawwell

#pragma once

#include <string>

namespace drawwell {

/// A kind of wood, dry and free of ash; the three element fractions sum to one.
struct Wood {
    std::string name;                 // `ash`
    std::string meaning;              // what a builder calls it
    double carbon = 0.493;            // [-] mass fraction, nitrogen counted as oxygen
    double hydrogen = 0.061;          // [-]
    double oxygen = 0.446;            // [-]
    double ash = 0.005;               // [-] of dry mass
    double higher_heating_value = 0;  // [J/kg] of dry ash-free wood
    double density = 0;               // [kg/m3] as sold, air dry
    std::string source;
};

}  // namespace drawwell

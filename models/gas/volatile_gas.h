#pragma once

namespace drawwell {

/// The gas that wood gives off when heated, as one pseudo-species; element fractions sum to one.
struct VolatileGas {
    double carbon = 0;                // [-] mass fraction
    double hydrogen = 0;              // [-]
    double oxygen = 0;                // [-]
    double higher_heating_value = 0;  // [J/kg] at 298.15 K, to carbon dioxide and liquid water
};

}  // namespace drawwell

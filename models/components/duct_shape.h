#pragma once

#include "models/components/gas_passage.h"
#include "models/stove.h"

namespace drawwell {

/// The inner section of a duct.
struct DuctSection {
    double area = 0;                // [m2]
    double perimeter = 0;           // [m]
    double hydraulic_diameter = 0;  // [m]
    double laminar_constant = 64;   // [-] friction factor times Reynolds number
    double beam_length = 0;         // [m] mean, to the walls

    /// Radius [m] of a round duct with this perimeter, for conduction through its wall.
    double equivalent_radius() const;
};

DuctSection round_section(double bore);
DuctSection rectangular_section(double width, double depth);
/// The riser's, round or not.
DuctSection riser_section(const Riser& riser);

/// An empty gas cell of a duct.
GasCellShape duct_cell(const DuctSection& section, double length, double rise);

/// A passage that is one opening: no length to speak of, only its loss.
GasPassageShape opening(double area, double loss);

}  // namespace drawwell

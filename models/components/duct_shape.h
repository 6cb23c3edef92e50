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
    /// Diameter [m] of a round duct of this area.
    double equal_bore() const;
};

DuctSection round_section(double bore);
DuctSection rectangular_section(double width, double depth);
/// A regular octagon, `across` [m] from flat to flat: 8 tan(22.5 deg) of them round it,
/// hydraulically as wide as across. Laminar friction 4 x 15.412 (Fanning), Shah and London, from
/// memory.
DuctSection octagonal_section(double across);
/// The riser's, whatever its shape; the one place that knows it.
DuctSection riser_section(const Riser& riser);

/// An empty gas cell of a duct.
GasCellShape duct_cell(const DuctSection& section, double length, double rise);

/// A passage that is one opening: no length to speak of, only its loss.
GasPassageShape opening(double area, double loss);

}  // namespace drawwell

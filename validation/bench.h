#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "solver/simulate.h"

namespace drawwell {

/// A network of solids alone, as closed forms have it. The solver wants a gas path: a little air
/// passes by and touches nothing.
class Bench {
  public:
    Bench();

    /// A solid of constant properties.
    SolidId add(double mass, double heat_capacity, double conductivity, double temperature);
    /// A face [m2] that loses `flux` [W/m2] at its temperature [K].
    void add_face(SolidId solid, double area, std::function<double(double)> flux);

    /// A flat wall of `cells` equal cells whose two end cells are halves with their node on the
    /// face, as the stove's walls are; gives its solids from one face to the other.
    struct Slab {
        double thickness = 0, area = 1;                           // [m], [m2]
        double conductivity = 0, density = 0, heat_capacity = 0;  // [W/(m K)], [kg/m3], [J/(kg K)]
        double temperature = 0;                                   // [K] at first
        std::size_t cells = 0;
    };
    std::vector<SolidId> add_slab(const Slab& slab);

    Network network;

    /// Temperatures [K] of all solids at each time, the last of which ends the run.
    std::vector<std::vector<double>> run(const std::vector<double>& times, double tolerance);
};

}  // namespace drawwell

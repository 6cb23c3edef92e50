#pragma once

#include <algorithm>
#include <cmath>

#include "models/components/gas_passage.h"
#include "models/laws/convection.h"
#include "solver/constants.h"

namespace drawwell {

/// The gas of a cell as the film on its walls sees it.
struct FilmGas {
    double temperature = 0;   // [K]
    double density = 0;       // [kg/m3]
    double viscosity = 0;     // [Pa s]
    double conductivity = 0;  // [W/(m K)]
    double prandtl = 0;       // [-]
    double mass_flow = 0;     // [kg/s] positive
    bool downward = false;
};

/// Forced flow in a duct, stronger near its entry.
class DuctFilm {
  public:
    explicit DuctFilm(const GasPassageShape&) {}

    /// [W/(m2 K)] over the next cell in flow order.
    double start(const GasCellShape& cell, const FilmGas& gas) {
        const double diameter = cell.hydraulic_diameter;
        const double reynolds = gas.mass_flow * diameter / (cell.area * gas.viscosity);
        const double end = way_ + cell.length / diameter;
        const double mean = duct_nusselt_mean(reynolds, gas.prandtl, end);
        // What the cell adds to the mean from the entry on; no less than the mean of a long duct.
        const double local = (mean * end - mean_ * way_) / (end - way_);
        mean_ = mean;
        way_ = end;
        return std::max(local, 3.66) * gas.conductivity / diameter;
    }
    static double at_wall(double coefficient, const GasCellShape&, const FilmGas&, double) {
        return coefficient;
    }

  private:
    double way_ = 0, mean_ = 0;
};

/// Flow between two upright walls, where buoyancy at each wall helps or hinders it.
class AnnulusFilm {
  public:
    explicit AnnulusFilm(const GasPassageShape& shape) : duct_(shape), height_(shape.film_length) {}

    double start(const GasCellShape& cell, const FilmGas& gas) {
        prandtl_factor_ = vertical_prandtl_factor(gas.prandtl);
        return duct_.start(cell, gas);
    }
    double at_wall(double forced, const GasCellShape&, const FilmGas& gas, double wall) const {
        const double kinematic = gas.viscosity / gas.density;
        const double rayleigh = constants::gravity * std::abs(gas.temperature - wall) /
                                gas.temperature * height_ * height_ * height_ /
                                (kinematic * kinematic) * gas.prandtl;
        const double natural = natural_vertical_nusselt_by_factor(rayleigh, prandtl_factor_) *
                               gas.conductivity / height_;
        const bool sinks_at_wall = wall < gas.temperature;
        return mixed_nusselt(natural, forced, sinks_at_wall == gas.downward);
    }

  private:
    DuctFilm duct_;
    double height_;              // [m]
    double prandtl_factor_ = 0;  // [-] of the cell's gas
};

/// Gas that all but stands in a chamber and sinks along walls colder than itself.
class ChamberFilm {
  public:
    explicit ChamberFilm(const GasPassageShape& shape) : upright_(shape) {}

    double start(const GasCellShape& cell, const FilmGas& gas) { return upright_.start(cell, gas); }
    double at_wall(double forced, const GasCellShape& cell, const FilmGas& gas, double wall) const {
        FilmGas along = gas;  // whichever way the chamber is crossed, the wall makes its own stream
        along.downward = wall < gas.temperature;
        return upright_.at_wall(forced, cell, along, wall);
    }

  private:
    AnnulusFilm upright_;
};

/// The jet from the riser against the plate, spreading outwards.
class JetFilm {
  public:
    explicit JetFilm(const GasPassageShape& shape)
        : bore_(shape.film_length), gap_(shape.jet_gap), area_(shape.jet_area) {}

    double start(const GasCellShape& cell, const FilmGas& gas) const {
        const double reynolds = gas.mass_flow * bore_ / (area_ * gas.viscosity);
        return stagnation_nusselt(reynolds, gas.prandtl, gap_ / bore_) *
               stagnation_profile(cell.radius / bore_) * gas.conductivity / bore_;
    }
    static double at_wall(double coefficient, const GasCellShape&, const FilmGas&, double) {
        return coefficient;
    }

  private:
    double bore_, gap_, area_;
};

}  // namespace drawwell

#pragma once

#include <vector>

#include "solver/table.h"

namespace drawwell {

/// Specific enthalpy of a solid against temperature and back: c(T) integrated once, so that a
/// narrow peak such as the 735 degC one of steel is never stepped over.
class EnthalpyCurve {
  public:
    /// `heat_capacity` [J/(kg K)] against temperature [K]; positive everywhere, else InputError.
    explicit EnthalpyCurve(const Table& heat_capacity);

    double enthalpy(double temperature) const;  // [J/kg], zero at 0 K with c held below the table
    double temperature(double enthalpy) const;  // [K]
    /// The same, sooner where a guess [K] is within a kelvin; any guess will do.
    double temperature(double enthalpy, double guess) const;
    double heat_capacity(double temperature) const;  // [J/(kg K)] slope of the curve

  private:
    std::size_t interval(double temperature) const;
    double on_line(std::size_t interval, double enthalpy) const;  // [K]
    std::vector<double> enthalpy_;  // [J/kg] on a uniform grid of temperature
};

}  // namespace drawwell

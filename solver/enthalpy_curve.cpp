#include "solver/enthalpy_curve.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double step = 1.0;          // [K] resolves the peak of steel (about 10 K wide)
constexpr std::size_t points = 2201;  // 0 to 2200 K, continued in line above
constexpr int quadrature_points = 8;  // of c(T) within a step

}  // namespace

EnthalpyCurve::EnthalpyCurve(const Table& heat_capacity) : enthalpy_(points) {
    for (std::size_t i = 1; i < points; ++i) {
        double mean = 0;
        for (int j = 0; j < quadrature_points; ++j)
            mean +=
                heat_capacity((static_cast<double>(i - 1) + (j + 0.5) / quadrature_points) * step);
        mean /= quadrature_points;
        if (!(mean > 0)) throw InputError("a heat capacity must be positive");
        enthalpy_[i] = enthalpy_[i - 1] + mean * step;
    }
}

std::size_t EnthalpyCurve::interval(double temperature) const {
    const double place = std::clamp(temperature / step, 0.0, static_cast<double>(points - 2));
    return static_cast<std::size_t>(place);
}

double EnthalpyCurve::enthalpy(double temperature) const {
    const std::size_t i = interval(temperature);
    return enthalpy_[i] +
           (temperature - static_cast<double>(i) * step) * (enthalpy_[i + 1] - enthalpy_[i]) / step;
}

double EnthalpyCurve::temperature(double enthalpy) const {
    const auto above = std::upper_bound(enthalpy_.begin() + 1, enthalpy_.end() - 1, enthalpy);
    return on_line(static_cast<std::size_t>(above - enthalpy_.begin()) - 1, enthalpy);
}

double EnthalpyCurve::temperature(double enthalpy, double guess) const {
    const std::size_t i = interval(guess);
    if (!(enthalpy_[i] <= enthalpy && enthalpy < enthalpy_[i + 1])) return temperature(enthalpy);
    return on_line(i, enthalpy);
}

double EnthalpyCurve::on_line(std::size_t i, double enthalpy) const {
    return static_cast<double>(i) * step +
           (enthalpy - enthalpy_[i]) * step / (enthalpy_[i + 1] - enthalpy_[i]);
}

double EnthalpyCurve::heat_capacity(double temperature) const {
    const std::size_t i = interval(temperature);
    return (enthalpy_[i + 1] - enthalpy_[i]) / step;
}

}  // namespace drawwell

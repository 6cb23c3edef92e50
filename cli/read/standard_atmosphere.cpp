#include "cli/read/standard_atmosphere.h"

#include <cmath>

#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double lapse = 0.0065;      // [K/m]
constexpr double sea_level = 288.15;  // [K]
constexpr double exponent = 5.25588;  // [-]

}  // namespace

double standard_pressure_at(double altitude) {
    return constants::standard_pressure * std::pow(1 - lapse * altitude / sea_level, exponent);
}

double standard_altitude(double pressure) {
    return sea_level / lapse *
           (1 - std::pow(pressure / constants::standard_pressure, 1 / exponent));
}

}  // namespace drawwell

#include "cli/read/unit_table.h"

#include <array>

#include "solver/constants.h"

namespace drawwell {
namespace {

using enum Quantity;
constexpr double inch = 0.0254;       // [m] exact, international yard and pound agreement 1959
constexpr double pound = 0.45359237;  // [kg] exact, the same
constexpr double btu = 1055.056;      // [J] international table, rounded
constexpr double water_inch =
    249.089;  // [Pa] conventional inch of water, from memory of NIST SP 811
constexpr double water_millimetre = 9.80665;  // [Pa] conventional, the same
constexpr double degree = constants::pi / 180.0;

constexpr std::array units{
    Unit{"mm", length, 1e-3},
    Unit{"cm", length, 1e-2},
    Unit{"m", length, 1},
    Unit{"in", length, inch},
    Unit{"ft", length, 12 * inch},
    Unit{"inch", length, inch, 0, false},
    Unit{"inches", length, inch, 0, false},
    Unit{"\"", length, inch, 0, false},
    Unit{"foot", length, 12 * inch, 0, false},
    Unit{"feet", length, 12 * inch, 0, false},
    Unit{"'", length, 12 * inch, 0, false},
    Unit{"mm2", area, 1e-6},
    Unit{"cm2", area, 1e-4},
    Unit{"m2", area, 1},
    Unit{"in2", area, inch* inch},
    Unit{"ft2", area, 144 * inch* inch, 0, false},
    Unit{"mm²", area, 1e-6, 0, false},
    Unit{"cm²", area, 1e-4, 0, false},
    Unit{"m²", area, 1, 0, false},
    Unit{"l", volume, 1e-3},
    Unit{"m3", volume, 1},
    Unit{"gal", volume, 231 * inch* inch* inch},  // US gallon, exact
    Unit{"L", volume, 1e-3, 0, false},
    Unit{"m³", volume, 1, 0, false},
    Unit{"deg", angle, degree},
    Unit{"rad", angle, 1},
    Unit{"°", angle, degree, 0, false},
    Unit{"°C", temperature, 1, constants::ice_point},
    Unit{"°F", temperature, 5.0 / 9.0, constants::ice_point * 1.8 - 32},
    Unit{"K", temperature, 1},
    Unit{"C", temperature, 1, constants::ice_point, false},
    Unit{"F", temperature, 5.0 / 9.0, constants::ice_point * 1.8 - 32, false},
    Unit{"degC", temperature, 1, constants::ice_point, false},
    Unit{"degF", temperature, 5.0 / 9.0, constants::ice_point * 1.8 - 32, false},
    Unit{"s", time, 1},
    Unit{"min", time, 60},
    Unit{"h", time, 3600},
    Unit{"kg", mass, 1},
    Unit{"g", mass, 1e-3},
    Unit{"lb", mass, pound},
    Unit{"oz", mass, pound / 16},
    Unit{"kg/h", burn_rate, 1.0 / 3600},
    Unit{"g/s", burn_rate, 1e-3},
    Unit{"kg/s", burn_rate, 1},
    Unit{"lb/h", burn_rate, pound / 3600},
    Unit{"kW", power, 1e3},
    Unit{"W", power, 1},
    Unit{"BTU/h", power, btu / 3600},
    Unit{"Pa", pressure, 1},
    Unit{"hPa", pressure, 100},
    Unit{"kPa", pressure, 1000},
    Unit{"mbar", pressure, 100},
    Unit{"inH2O", pressure, water_inch},
    Unit{"mmH2O", pressure, water_millimetre},
    Unit{"inWC", pressure, water_inch, 0, false},
    Unit{"mmWC", pressure, water_millimetre, 0, false},
    Unit{"mm WC", pressure, water_millimetre, 0, false},
    Unit{"m/s", speed, 1},
    Unit{"km/h", speed, 1.0 / 3.6},
    Unit{"mph", speed, 5280 * 12 * inch / 3600},
    Unit{"W/K", heat_loss, 1},
    Unit{"kW/K", heat_loss, 1000, 0, false},
    Unit{"m2 K/W", heat_resistance, 1},
    Unit{"m2K/W", heat_resistance, 1, 0, false},
    Unit{"m² K/W", heat_resistance, 1, 0, false},
    Unit{"m²K/W", heat_resistance, 1, 0, false},
    Unit{"%", moisture, 0.01},
    Unit{"% wet", moisture, 0.01},
    Unit{"% dry", moisture, 0.01},
    Unit{"% wet basis", moisture, 0.01, 0, false},
    Unit{"% dry basis", moisture, 0.01, 0, false},
    Unit{"kg/kg wet", moisture, 1, 0, false},
    Unit{"%", share, 0.01},
    Unit{"", share, 1},
    Unit{"", number, 1},
};

}  // namespace

std::span<const Unit> all_units() {
    return units;
}

}  // namespace drawwell

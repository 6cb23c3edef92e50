#pragma once

#include <string>
#include <string_view>

namespace drawwell {

/// How a figure shows a quantity: the unit people read it in, and an SI value in that unit.
struct ShownUnit {
    std::string label;  // "°C", "g/s"; empty: a plain number
    double (*from_si)(double value);
};

/// The usual one for a column's SI unit: K in °C, kg/s in g/s, W in kW, J in MJ, m in mm; any other
/// as it is.
ShownUnit shown_unit(std::string_view unit);

}  // namespace drawwell

#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "cli/read/units.h"

namespace drawwell {

/// What a terminal page is written in. `us`: inches, pounds and °F in place of millimetres,
/// kilograms and °C. Draw stays in pascals in both, as conditions and gauges for so little have it;
/// flows and heat stay as well.
enum class UnitSystem { metric, us };

/// How a figure shows a quantity: the unit people read it in, and an SI value in that unit.
struct ShownUnit {
    std::string label;  // "°C", "g/s"; empty: a plain number
    double (*from_si)(double value);
};

/// The usual one for a column's SI unit: K in °C, kg/s in g/s, W in kW, J in MJ, m in mm; any other
/// as it is.
ShownUnit shown_unit(std::string_view unit, UnitSystem system = UnitSystem::metric);

/// "472 °C" of kelvin.
std::string show_temperature(double kelvin, UnitSystem system = UnitSystem::metric);
/// "166 mm", "6 9/16 in" of metres; millimetres with the decimals asked for.
std::string show_length(double length, UnitSystem system, int decimals = 0);
/// "4.3 kg", "9.5 lb".
std::string show_mass(double mass, UnitSystem system, int decimals = 1);
/// What a key is set to, for people: "371.6 mm", "14 5/8 in".
std::string show_setting(double value, Quantity quantity, UnitSystem system);
/// By how much a key changes, with its sign: "+50.23 mm", "-2 in"; temperatures without their zero.
std::string show_shift(double difference, Quantity quantity, UnitSystem system);

/// A sentence of the models in the units asked for: "fries (175 °C) after" is "fries (347 °F)
/// after" in US ones.
std::string in_system(std::string_view sentence, UnitSystem system);

}  // namespace drawwell

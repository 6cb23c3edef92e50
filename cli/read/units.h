#pragma once

#include <string>
#include <string_view>

namespace drawwell {

/// What a number at the border measures; each has its own units. Inside, all are SI.
enum class Quantity {
    length,
    area,
    volume,
    angle,
    temperature,
    time,
    mass,
    burn_rate,
    power,
    pressure,
    speed,
    heat_loss,
    heat_resistance,
    moisture,
    share,
    number,
};

/// "length", "rate of burning", ... as people say it.
std::string_view quantity_name(Quantity quantity);

/// The units a quantity may be written in, for messages: `mm, cm, m, in, ft`.
std::string accepted_units(Quantity quantity);

/// A quantity as text in SI: "180 mm", "7 1/8 in", "5 ft 4 in", "68 °F", "19 % dry" (which becomes
/// a share of the wet mass). InputError with the reason: no number, not finite, no unit, another's
/// unit.
double parse_quantity(std::string_view text, Quantity quantity);

/// The shortest text in a usual unit that parse_quantity turns into exactly this value again.
std::string format_quantity(double value, Quantity quantity);

/// The same, rounded to `digits` significant digits for people.
std::string show_quantity(double value, Quantity quantity, int digits = 4);

/// A length to the nearest sixteenth of an inch, as a folding rule has it: "7 1/16 in"; from ten
/// feet on "18 ft 0 9/16 in". Sheet under an eighth in thousandths, as it is sold: "0.047 in".
std::string show_inches(double length);

/// An SI value as a number of a unit from the table: number_in(0.0254, "in", Quantity::length)
/// is 1.
double number_in(double value, std::string_view unit, Quantity quantity);

/// SI values as numbers of the unit named, for files and pages that name it beside them.
double to_celsius(double kelvin);
double to_millimetres(double metres);
double to_minutes(double seconds);
double to_grams(double kilograms);
double to_kilowatts(double watts);
double to_megajoules(double joules);
double to_percent(double share);

/// Such numbers back in SI.
double from_celsius(double celsius);
double from_minutes(double minutes);
double from_megajoules(double megajoules);

}  // namespace drawwell

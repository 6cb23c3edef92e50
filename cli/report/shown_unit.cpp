#include "cli/report/shown_unit.h"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>

namespace drawwell {
namespace {

constexpr double kelvin_a_fahrenheit = 5.0 / 9.0;

std::string with_sign(const std::string& text) {
    return text.starts_with('-') ? text : "+" + text;
}

}  // namespace

ShownUnit shown_unit(std::string_view unit, UnitSystem system) {
    if (system == UnitSystem::us) {
        if (unit == "K")
            return {"°F",
                    [](double kelvin) { return number_in(kelvin, "°F", Quantity::temperature); }};
        if (unit == "m")
            return {"in", [](double metres) { return number_in(metres, "in", Quantity::length); }};
        if (unit == "kg")
            return {"lb", [](double mass) { return number_in(mass, "lb", Quantity::mass); }};
    }
    if (unit == "K") return {"°C", to_celsius};
    if (unit == "kg/s") return {"g/s", to_grams};
    if (unit == "W") return {"kW", to_kilowatts};
    if (unit == "J") return {"MJ", to_megajoules};
    if (unit == "m") return {"mm", to_millimetres};
    return {unit == "1" ? "" : std::string(unit), [](double value) { return value; }};
}

std::string show_temperature(double kelvin, UnitSystem system) {
    const ShownUnit unit = shown_unit("K", system);
    return fmt::format("{:.0f} {}", std::round(unit.from_si(kelvin)) + 0.0, unit.label);
}

std::string show_length(double length, UnitSystem system, int decimals) {
    if (system == UnitSystem::us) return show_inches(length);
    return fmt::format("{:.{}f} mm", to_millimetres(length), decimals);
}

std::string show_mass(double mass, UnitSystem system, int decimals) {
    const ShownUnit unit = shown_unit("kg", system);
    return fmt::format("{:.{}f} {}", unit.from_si(mass), decimals, unit.label);
}

std::string show_setting(double value, Quantity quantity, UnitSystem system) {
    if (system == UnitSystem::metric) return show_quantity(value, quantity, 4);
    if (quantity == Quantity::length) return show_inches(value);
    if (quantity == Quantity::temperature) return show_temperature(value, system);
    if (quantity == Quantity::mass) return show_mass(value, system, 2);
    if (quantity == Quantity::area)
        return fmt::format("{:.4g} in2", number_in(value, "in2", quantity));
    return show_quantity(value, quantity, 4);
}

std::string show_shift(double difference, Quantity quantity, UnitSystem system) {
    if (quantity == Quantity::temperature)
        return system == UnitSystem::us
                   ? fmt::format("{:+.3g} °F", difference / kelvin_a_fahrenheit)
                   : fmt::format("{:+.3g} K", difference);
    return with_sign(show_setting(difference, quantity, system));
}

std::string in_system(std::string_view sentence, UnitSystem system) {
    constexpr std::string_view degree = " °C";
    std::string text(sentence);
    if (system == UnitSystem::metric) return text;
    for (std::size_t at = text.find(degree); at != std::string::npos;
         at = text.find(degree, at + 1)) {
        std::size_t from = at;
        while (from > 0 &&
               std::string_view("0123456789.").find(text[from - 1]) != std::string_view::npos)
            --from;
        if (from == at) continue;
        const double celsius = std::strtod(text.c_str() + from, nullptr);
        text.replace(from, at - from + degree.size(),
                     show_temperature(from_celsius(celsius), system));
    }
    return text;
}

}  // namespace drawwell

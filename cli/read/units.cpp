#include "cli/read/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include "cli/read/nearest.h"
#include "cli/read/number_text.h"
#include "cli/read/unit_table.h"
#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

using enum Quantity;

std::string with_article(Quantity quantity) {
    const std::string_view name = quantity_name(quantity);
    return fmt::format("{} {}", name.front() == 'a' ? "an" : "a", name);
}

[[noreturn]] void refuse_unit(std::string_view unit, Quantity quantity) {
    const std::string units_text = accepted_units(quantity);
    const std::string accepted =
        units_text.empty() ? std::string("here stands a plain number")
                           : fmt::format("{} is in {}", with_article(quantity), units_text);
    if (unit.empty()) throw InputError(fmt::format("the unit is missing; {}", accepted));
    std::vector<std::string> names;
    for (const Unit& known : all_units())
        if (known.quantity == quantity && !known.name.empty()) names.emplace_back(known.name);
    for (const Unit& other : all_units())
        if (other.name == unit)
            throw InputError(fmt::format("{} is a unit of {}; {}", unit,
                                         quantity_name(other.quantity), accepted));
    throw InputError(
        fmt::format("unknown unit \"{}\"; {}{}", unit, accepted, did_you_mean(unit, names)));
}

const Unit& find_unit(std::string_view name, Quantity quantity) {
    const auto found = std::find_if(all_units().begin(), all_units().end(), [&](const Unit& unit) {
        return unit.quantity == quantity && unit.name == name;
    });
    if (found == all_units().end()) refuse_unit(name, quantity);
    return *found;
}

/// Takes the unit off the front: everything up to the next word that starts with a digit.
std::string take_unit(std::string_view& text) {
    std::string unit;
    skip_blanks(text);
    while (!text.empty() && !starts_number(text.front())) {
        const std::size_t length = std::min(text.find_first_of(" \t"), text.size());
        unit += (unit.empty() ? "" : " ") + std::string(text.substr(0, length));
        text.remove_prefix(length);
        skip_blanks(text);
    }
    if (unit.starts_with("%") && unit.size() > 1 && unit[1] != ' ') unit.insert(1, " ");
    return unit;
}

double to_si(double number, const Unit& unit) {
    const double value = unit.factor * (number + unit.offset);
    if (unit.name.starts_with("% dry")) return value / (1 + value);
    return value;
}

double from_si(double value, const Unit& unit) {
    return value / unit.factor - unit.offset;
}

/// The unit a person would write this value in.
const Unit& usual_unit(double value, Quantity quantity) {
    const auto whole = [&](double part) { return value >= part && std::fmod(value, part) == 0; };
    switch (quantity) {
        case length:
            return find_unit(std::abs(value) < 10 ? "mm" : "m", quantity);
        case time:
            return find_unit(whole(3600) ? "h" : whole(60) ? "min" : "s", quantity);
        case pressure:
            return find_unit(std::abs(value) < 2000 ? "Pa" : "hPa", quantity);
        case power:
            return find_unit(std::abs(value) < 1000 ? "W" : "kW", quantity);
        case area:
            return find_unit(value < 1e-3 ? "mm2" : value < 0.1 ? "cm2" : "m2", quantity);
        case moisture:
            return find_unit("% wet", quantity);
        default:
            break;
    }
    return *std::find_if(all_units().begin(), all_units().end(),
                         [&](const Unit& unit) { return unit.quantity == quantity; });
}

std::string join(const std::string& number, const Unit& unit) {
    return unit.name.empty() ? number : fmt::format("{} {}", number, unit.name);
}

}  // namespace

std::string_view quantity_name(Quantity quantity) {
    switch (quantity) {
        case length:
            return "length";
        case area:
            return "area";
        case volume:
            return "volume";
        case angle:
            return "angle";
        case temperature:
            return "temperature";
        case time:
            return "time";
        case mass:
            return "mass";
        case burn_rate:
            return "burn rate";
        case power:
            return "power";
        case pressure:
            return "pressure";
        case speed:
            return "speed";
        case heat_loss:
            return "heat loss";
        case heat_resistance:
            return "heat resistance";
        case moisture:
            return "moisture";
        case share:
            return "share";
        case number:
            return "plain number";
    }
    return "";
}

std::string accepted_units(Quantity quantity) {
    std::string list;
    for (const Unit& unit : all_units())
        if (unit.quantity == quantity && unit.listed && !unit.name.empty())
            list += (list.empty() ? "" : ", ") + std::string(unit.name);
    return list;
}

double parse_quantity(std::string_view text, Quantity quantity) {
    double total = 0;
    for (bool first = true; first || !text.empty(); first = false) {
        skip_blanks(text);
        const double number = take_number(text);
        const Unit& unit = find_unit(take_unit(text), quantity);
        const bool sums = quantity == length || quantity == time || quantity == mass;
        if (!first && (!sums || number < 0)) throw InputError("one number and one unit are enough");
        if (unit.name.starts_with("% dry") && number < 0) throw InputError("it can't be negative");
        total += to_si(number, unit);
    }
    return total;
}

std::string format_quantity(double value, Quantity quantity) {
    const Unit& unit = usual_unit(value, quantity);
    for (const int digits : {12, 15, 17}) {
        const std::string text = join(fmt::format("{:.{}g}", from_si(value, unit), digits), unit);
        if (parse_quantity(text, quantity) == value) return text;
    }
    for (const Unit& plain : all_units())
        if (plain.quantity == quantity && plain.factor == 1 && plain.offset == 0)
            return join(fmt::format("{}", value), plain);
    return join(fmt::format("{:.17g}", from_si(value, unit)), unit);
}

std::string show_quantity(double value, Quantity quantity, int digits) {
    const Unit& unit = usual_unit(value, quantity);
    return join(fmt::format("{:.{}g}", from_si(value, unit), digits), unit);
}

double number_in(double value, std::string_view unit, Quantity quantity) {
    return from_si(value, find_unit(unit, quantity));
}

std::string show_inches(double length) {
    constexpr long parts = 16, foot = 12 * parts;
    if (length < 0) return "-" + show_inches(-length);
    const double inches = from_si(length, find_unit("in", Quantity::length));
    if (inches > 0 && inches < 0.125) return fmt::format("{:.3f} in", inches);
    const long sixteenths = std::lround(inches * parts);
    const long divisor = std::gcd(sixteenths % parts, parts);
    const auto text = [&](long count) {
        const long whole = count / parts, rest = count % parts;
        if (rest == 0) return fmt::format("{} in", whole);
        return fmt::format("{}{}/{} in", whole > 0 ? fmt::format("{} ", whole) : "", rest / divisor,
                           parts / divisor);
    };
    if (sixteenths < 10 * foot) return text(sixteenths);
    const std::string inch = sixteenths % foot < parts && sixteenths % parts != 0 ? "0 " : "";
    return fmt::format("{} ft {}{}", sixteenths / foot, inch, text(sixteenths % foot));
}

double to_celsius(double kelvin) {
    return kelvin - constants::ice_point;
}
double to_millimetres(double metres) {
    return metres * 1e3;
}
double to_minutes(double seconds) {
    return seconds / 60;
}
double to_grams(double kilograms) {
    return kilograms * 1e3;
}
double to_kilowatts(double watts) {
    return watts / 1e3;
}
double to_megajoules(double joules) {
    return joules / 1e6;
}
double to_percent(double share) {
    return share * 1e2;
}
double from_celsius(double celsius) {
    return celsius + constants::ice_point;
}
double from_minutes(double minutes) {
    return minutes * 60;
}
double from_megajoules(double megajoules) {
    return megajoules * 1e6;
}

}  // namespace drawwell

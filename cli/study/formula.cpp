#include "cli/study/formula.h"

#include <fmt/format.h>
#include <muParser.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <deque>
#include <vector>

#include "cli/read/keys.h"
#include "cli/read/nearest.h"
#include "cli/read/number_text.h"
#include "cli/read/suggest_key.h"
#include "cli/read/unit_table.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr const char* name_characters =
    "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_.";

/// Sizes of base units of one's own: what is in proportion to lengths, masses and so on changes
/// with them as its quantity must.
struct Measure {
    double length = 1, mass = 1, time = 1, temperature = 1, angle = 1;
};

/// By what a quantity's numbers change in such units.
double factor(Quantity quantity, const Measure& in) {
    using enum Quantity;
    const double energy = in.mass * in.length * in.length / (in.time * in.time);
    switch (quantity) {
        case length:
            return in.length;
        case area:
            return in.length * in.length;
        case volume:
            return in.length * in.length * in.length;
        case angle:
            return in.angle;
        case temperature:
            return in.temperature;
        case time:
            return in.time;
        case mass:
            return in.mass;
        case burn_rate:
            return in.mass / in.time;
        case power:
            return energy / in.time;
        case pressure:
            return energy / (in.length * in.length * in.length);
        case speed:
            return in.length / in.time;
        case heat_loss:
            return energy / in.time / in.temperature;
        case heat_resistance:
            return in.length * in.length * in.temperature * in.time / energy;
        case moisture:
        case share:
        case number:
            break;
    }
    return 1;
}

bool in_name(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) || c == '_' || c == '.';
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// The quantity that a unit measures, the one wanted if it may.
Quantity measured_by(const std::string& unit, Quantity wanted) {
    const auto named = [&](const Unit& each) { return each.name == unit; };
    const auto units = all_units();
    if (std::any_of(units.begin(), units.end(),
                    [&](const Unit& each) { return named(each) && each.quantity == wanted; }))
        return wanted;
    const auto other = std::find_if(units.begin(), units.end(), named);
    return other == units.end() ? wanted : other->quantity;
}

/// The formula with `45mm` and the like as plain numbers of one's own units.
std::string in_plain_numbers(std::string_view formula, Quantity wanted, const Measure& in) {
    std::string out;
    for (std::size_t i = 0; i < formula.size();) {
        if (is_digit(formula[i])) {
            std::size_t end = i;
            while (end < formula.size() && (is_digit(formula[end]) || formula[end] == '.')) ++end;
            if (end + 1 < formula.size() && formula[end] == ',' && is_digit(formula[end + 1]))
                throw InputError(
                    "a comma in a number is read in two ways: write a decimal point, or a blank "
                    "behind a comma that parts values");
            const std::string number(formula.substr(i, end - i));
            std::size_t unit = end;
            while (unit < formula.size() && formula[unit] == ' ') ++unit;
            std::size_t after = unit;
            while (after < formula.size() &&
                   std::string_view(" +-*/^()<>=,?:!&|").find(formula[after]) ==
                       std::string_view::npos)
                ++after;
            const std::string name(formula.substr(unit, after - unit));
            if (name.empty()) {
                out += number;
                i = end;
                continue;
            }
            const Quantity quantity = measured_by(name, wanted);
            out += fmt::format(
                "({:.17g})", parse_quantity(number + " " + name, quantity) * factor(quantity, in));
            i = after;
        } else if (in_name(formula[i])) {
            while (i < formula.size() && in_name(formula[i])) out += formula[i++];
        } else {
            out += formula[i++];
        }
    }
    return out;
}

/// Values of keys, made as the parser meets their names.
class Names {
  public:
    Names(const ValueOfKey& value_of, const Measure& in) : value_of_(value_of), in_(in) {}

    static double* make(const char* name, void* self) {
        auto& names = *static_cast<Names*>(self);
        const Key* key = find_key(name).key;
        if (!key) throw mu::ParserError("unknown key " + std::string(name) + suggest_key(name));
        try {
            return &names.values_.emplace_back(names.value_of_(name) *
                                               factor(key->quantity, names.in_));
        } catch (const InputError& error) {
            throw mu::ParserError(error.what());  // the only one that passes through the parser
        }
    }

  private:
    const ValueOfKey& value_of_;
    const Measure& in_;
    std::deque<double> values_;  // that do not move
};

double evaluated(std::string_view formula, Quantity wanted, const ValueOfKey& value_of,
                 const Measure& in) {
    try {
        Names names(value_of, in);
        mu::Parser parser;
        parser.DefineNameChars(name_characters);
        parser.SetVarFactory(Names::make, &names);
        parser.SetExpr(in_plain_numbers(formula, wanted, in));
        const double value = parser.Eval();
        if (parser.GetNumResults() != 1)
            throw InputError("a comma parts the arguments of a function and nothing else");
        return value;
    } catch (const mu::ParserError& error) {
        throw InputError(error.GetMsg());
    }
}

bool nearly(double a, double b) {
    constexpr double rounding = 1e-6;
    return std::abs(a - b) <= rounding * (std::abs(a) + std::abs(b));
}

/// Whether the formula says the same whatever units lengths, times and the rest are counted in.
/// Where it does not, a plain number stands where a figure with a unit must.
bool holds_in_any_units(std::string_view formula, Quantity wanted, const ValueOfKey& value_of,
                        double value) {
    constexpr double least = 1e-12;  // SI; what differences of equals leave behind
    const bool turns = formula.find("sin") != std::string_view::npos ||
                       formula.find("cos") != std::string_view::npos ||
                       formula.find("tan") != std::string_view::npos;
    for (const double size : {1.37, 0.0061, 813.0}) {
        Measure in{size, std::sqrt(size), 1 / size, std::cbrt(size), turns ? 1 : size * size};
        const double other = evaluated(formula, wanted, value_of, in);
        const double expected = value * factor(wanted, in);
        if (!std::isfinite(other) || nearly(other, expected)) continue;
        if (std::abs(value) < least && std::abs(other / factor(wanted, in)) < least) continue;
        return false;
    }
    return true;
}

}  // namespace

double work_out(std::string_view formula, Quantity wanted, const ValueOfKey& value_of) {
    const std::string plain = with_plain_minus(formula);
    const double value = evaluated(plain, wanted, value_of, {});
    if (!std::isfinite(value)) throw InputError("comes to no finite figure");
    if (!holds_in_any_units(plain, wanted, value_of, value)) {
        const std::string units = accepted_units(wanted);
        throw InputError(fmt::format(
            "this does not come to {} {}: a figure stands without its unit{}, or figures of "
            "different kinds are added or compared",
            quantity_name(wanted).front() == 'a' ? "an" : "a", quantity_name(wanted),
            units.empty()
                ? ""
                : fmt::format(" (write 45 {}, not 45)", units.substr(0, units.find(',')))));
    }
    return value;
}

}  // namespace drawwell

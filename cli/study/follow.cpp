#include "cli/study/follow.h"

#include <fmt/format.h>
#include <muParser.h>

#include <cctype>
#include <cmath>
#include <deque>
#include <optional>

#include "cli/read/keys.h"
#include "cli/read/suggest_key.h"
#include "cli/read/units.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr const char* name_characters =
    "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_.";

bool in_name(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) || c == '_' || c == '.';
}

/// The formula with `45mm` and the like as plain numbers in SI.
std::string in_si(std::string_view formula, Quantity quantity) {
    std::string out;
    for (std::size_t i = 0; i < formula.size();) {
        const char c = formula[i];
        if (std::isdigit(static_cast<unsigned char>(c))) {
            std::size_t end = i;
            while (end < formula.size() &&
                   (std::isdigit(static_cast<unsigned char>(formula[end])) || formula[end] == '.'))
                ++end;
            const std::string number(formula.substr(i, end - i));
            std::size_t unit = end;
            while (unit < formula.size() && formula[unit] == ' ') ++unit;
            std::size_t after = unit;
            while (after < formula.size() &&
                   std::string_view(" +-*/^()<>=,").find(formula[after]) == std::string_view::npos)
                ++after;
            const std::string name(formula.substr(unit, after - unit));
            if (name.empty()) {
                out += number;
                i = end;
            } else {
                out += fmt::format("({:.17g})", parse_quantity(number + " " + name, quantity));
                i = after;
            }
        } else if (in_name(c)) {
            while (i < formula.size() && in_name(formula[i])) out += formula[i++];
        } else {
            out += c;
            ++i;
        }
    }
    return out;
}

/// Values of a stove's keys, made as the parser meets their names.
class Names {
  public:
    explicit Names(const Stove& stove) : stove_(stove) {}

    static double* make(const char* name, void* self) {
        auto& names = *static_cast<Names*>(self);
        const std::optional<Value> value = get_value(names.stove_, name);
        const double* number = value ? std::get_if<double>(&*value) : nullptr;
        if (!number)
            throw mu::ParserError(find_key(name).key
                                      ? "the stove has no figure " + std::string(name)
                                      : "unknown key " + std::string(name) + suggest_key(name));
        return &names.values_.emplace_back(*number);
    }

  private:
    const Stove& stove_;
    std::deque<double> values_;  // that do not move
};

}  // namespace

Follow parse_follow(std::string_view text) {
    const std::size_t equals = text.find('=');
    if (equals == 0 || equals == std::string_view::npos)
        throw InputError(fmt::format(
            "--follow {}: write KEY = FORMULA, for example plate.underside = riser.top + 45mm",
            text));
    Follow follow{std::string(text.substr(0, equals)), std::string(text.substr(equals + 1))};
    std::erase(follow.key, ' ');
    const Key& key = known_key(follow.key, fmt::format("--follow {}", text));
    if (key.kind != Kind::quantity)
        throw InputError(fmt::format("--follow {}: {} is no single figure", text, follow.key));
    return follow;
}

Override followed(const Follow& follow, const Stove& stove) {
    const std::string typed = "--follow " + follow.key + "=" + follow.formula;
    const Quantity quantity = find_key(follow.key).key->quantity;
    double value = 0;
    try {
        Names names(stove);
        mu::Parser parser;
        parser.DefineNameChars(name_characters);
        parser.SetVarFactory(Names::make, &names);
        parser.SetExpr(in_si(follow.formula, quantity));
        value = parser.Eval();
    } catch (const mu::ParserError& error) {
        throw InputError(typed + ": " + error.GetMsg());
    } catch (const InputError& error) {
        throw InputError(typed + ": " + error.what());
    }
    if (!std::isfinite(value)) throw InputError(typed + ": comes to no finite figure");
    return {follow.key, show_quantity(value, quantity, 12), typed};
}

}  // namespace drawwell

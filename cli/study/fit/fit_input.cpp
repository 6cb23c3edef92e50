#include "cli/study/fit/fit_input.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/difference.h"
#include "cli/read/keys.h"
#include "cli/read/nearest.h"
#include "cli/read/suggest_key.h"
#include "cli/report/page_text.h"
#include "cli/study/fit/burn_log.h"
#include "cli/study/single_figure.h"
#include "models/uncertain_inputs.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr std::string_view outdoor = "day.outdoor";  // in kelvin, all else in proportion

/// Takes `4min+-1min` apart; the second is empty where no spread is said.
std::pair<std::string, std::string> parted(const std::string& text) {
    for (const std::string_view sign : {"+-", "±", "+/-"})
        if (const std::size_t at = text.find(sign); at != std::string::npos)
            return {text.substr(0, at), text.substr(at + sign.size())};
    return {text, ""};
}

bool blank(const std::string& text) {
    return text.find_first_not_of(' ') == std::string::npos;
}

FitInput key_input(const std::string& name, const std::string& said, const Stove& stove) {
    const Key& key = known_key(name, name);
    const bool figure = key.kind == Kind::quantity || key.kind == Kind::table;
    FitInput input{FitInput::Sort::key, name, 0, 0, key.quantity};
    const auto [middle, spread] = parted(said);
    if (!figure) throw InputError("the key is no single figure");
    if (blank(spread)) throw InputError("how well is it known? write " + name + "=70mm+-5mm");
    if (!blank(middle)) {
        input.middle = parse_quantity(middle, key.quantity);
    } else {
        const std::optional<double> number = figure_of(stove, name);
        if (!number) throw InputError("the stove has no figure there, say which it is about");
        input.middle = *number;
    }
    input.spread = parse_difference(spread, key.quantity);
    if (!(input.spread > 0)) throw InputError("a spread is over nothing");
    return input;
}

}  // namespace

double FitInput::value(double deviations) const {
    if (sort != Sort::uncertain) return middle + deviations * spread;
    return name == outdoor ? deviations * spread : std::exp(deviations * std::log1p(spread));
}

std::string FitInput::shown(double deviations) const {
    const double at = value(deviations);
    if (sort != Sort::uncertain) return show_quantity(at, quantity, 4);
    if (name == outdoor) return fmt::format("{:+.1f} K", at);
    return fmt::format("x {:.2f}", at);
}

FitInput parse_fit_input(const std::string& text, const Stove& stove, const Library& library) {
    const std::size_t equals = text.find('=');
    std::string name = text.substr(0, equals);
    std::erase(name, ' ');
    try {
        if (equals != std::string::npos) return key_input(name, text.substr(equals + 1), stove);
        std::vector<std::string> known;
        for (const FitInput& input : uncertain_fit_inputs(stove, library)) {
            if (input.name == name) return input;
            known.push_back(input.name);
        }
        if (find_key(name).key)
            throw InputError("how well is it known? write " + name + "=70mm+-5mm");
        const std::string meant = did_you_mean(name, known);
        throw InputError(
            "nothing uncertain is called so" +
            (meant.empty() ? fmt::format("; there are {}", fmt::join(known, ", ")) : meant));
    } catch (const InputError& error) {
        throw InputError(fmt::format("--fit {}: {}", text, error.what()));
    }
}

FitInput parse_clock_offset(const std::string& text) {
    FitInput clock{FitInput::Sort::clock, "clock", 0, 0, Quantity::time};
    const auto [middle, spread] = parted(text);
    try {
        clock.middle = blank(middle) ? 0 : parse_log_time(middle);
        if (spread.empty()) return clock;
        clock.spread = parse_quantity(spread, Quantity::time);
        if (!(clock.spread > 0)) throw InputError("a spread is over nothing");
    } catch (const InputError& error) {
        throw InputError(fmt::format("--clock-offset {}: {}", text, error.what()));
    }
    return clock;
}

std::vector<FitInput> uncertain_fit_inputs(const Stove& stove, const Library& library) {
    std::vector<FitInput> inputs;
    for (const UncertainInput& each : uncertain_inputs(library, stove))
        if (each.spread > 0)
            inputs.push_back({FitInput::Sort::uncertain, each.name, 0, each.spread, {}});
    return inputs;
}

Variant variant_of(const std::vector<FitInput>& inputs, const std::vector<double>& deviations) {
    Variant variant;
    for (std::size_t k = 0; k < inputs.size(); ++k) {
        const FitInput& input = inputs[k];
        if (input.sort == FitInput::Sort::key)
            variant.settings.push_back(
                {input.name, show_quantity(input.value(deviations[k]), input.quantity, 12), ""});
        else if (input.sort == FitInput::Sort::uncertain && deviations[k] != 0)
            variant.off.emplace_back(input.name, deviations[k]);
    }
    return variant;
}

}  // namespace drawwell

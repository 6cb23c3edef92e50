#include "cli/study/follow.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "cli/read/keys.h"
#include "cli/read/suggest_key.h"
#include "cli/read/units.h"
#include "cli/study/formula.h"
#include "cli/study/single_figure.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

/// What a formula comes to. InputError names the option.
double worked_out(const Follow& follow, const ValueOfKey& value_of) {
    try {
        return work_out(follow.formula, find_key(follow.key).key->quantity, value_of);
    } catch (const InputError& error) {
        throw InputError(
            fmt::format("--follow {}={}: {}", follow.key, follow.formula, error.what()));
    }
}

/// Stands for the key's value before a stove is known: no two alike, none of them round.
double any_value(const std::string& key) {
    double value = 1.1;
    for (const char c : key) value = std::fmod(value * 7.3 + static_cast<unsigned char>(c), 1.9);
    return 1.1 + value;
}

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
    worked_out(follow, any_value);
    return follow;
}

void check_follows(const std::vector<Follow>& follows, const std::vector<std::string>& varied) {
    for (std::size_t i = 0; i < follows.size(); ++i) {
        const std::string& key = follows[i].key;
        const auto same = [&](const Follow& other) { return other.key == key; };
        if (std::any_of(follows.begin(), follows.begin() + static_cast<std::ptrdiff_t>(i), same))
            throw InputError("--follow " + key + ": two formulas say it, leave one of them out");
        if (std::find(varied.begin(), varied.end(), key) != varied.end())
            throw InputError("--follow " + key + ": it is varied as well, leave one of them out");
    }
}

Override followed(const Follow& follow, const Stove& stove) {
    const double value = worked_out(follow, [&](const std::string& key) {
        const std::optional<double> number = figure_of(stove, key);
        if (!number) throw InputError("the stove has no figure " + key);
        return *number;
    });
    return {follow.key, show_quantity(value, find_key(follow.key).key->quantity, 12),
            "--follow " + follow.key + "=" + follow.formula};
}

}  // namespace drawwell

#include "cli/study/vary.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/difference.h"
#include "cli/read/keys.h"
#include "cli/read/number_text.h"
#include "cli/read/suggest_key.h"
#include "cli/read/units.h"
#include "cli/study/single_figure.h"
#include "cli/study/sobol.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr std::size_t most_variants = 1'000'000;
constexpr int digits = 10;  // of a value in a range: so that 500 mm + 3 x 50 mm is 650 mm

std::vector<std::string> split(std::string_view text, char at) {
    std::vector<std::string> parts;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t to = std::min(text.find(at, from), text.size());
        std::string part(text.substr(from, to - from));
        part.erase(0, part.find_first_not_of(' '));
        part.erase(part.find_last_not_of(' ') + 1);
        parts.push_back(std::move(part));
        from = to + 1;
    }
    return parts;
}

Quantity quantity_of(const Key& key) {
    if (key.kind == Kind::count) return Quantity::number;
    return key.kind == Kind::times ? Quantity::time : key.quantity;
}

/// Whether values of a key are told as FROM:TO or FROM:TO:STEP; times of day hold a colon as well,
/// rows over time stand in brackets.
bool is_range(const Key& key, std::string_view values, std::size_t parts) {
    const bool measured = takes_figure(key) || key.kind == Kind::count || key.kind == Kind::times;
    if (!measured || parts < 2 || parts > 3 || values.find('[') != std::string_view::npos)
        return false;
    const bool of_day = values.find_first_not_of("0123456789:, ") == std::string_view::npos;
    return !(key.kind == Kind::times && of_day);
}

/// A list's values, which a comma between digits parts where nobody meant it to: `7,5mm`.
std::vector<std::string> listed(const Key& key, std::string_view values) {
    const bool with_unit = (takes_figure(key) || key.kind == Kind::build_up) &&
                           (key.kind == Kind::build_up || !accepted_units(key.quantity).empty());
    const bool rows = values.find('[') != std::string_view::npos;
    if (with_unit && !rows && has_comma_in_number(values))
        throw InputError(
            "a comma between digits is read in two ways: write a decimal point, and a unit with "
            "each value");
    std::vector<std::string> each =
        split(values, values.find(';') == std::string_view::npos ? ',' : ';');
    if (key.kind == Kind::quantity || key.kind == Kind::count)
        for (const std::string& value : each)
            if (!value.empty()) parse_quantity(value, quantity_of(key));
    return each;
}

std::string value_text_of(const Key& key, double value) {
    return key.kind == Kind::count ? fmt::format("{:.0f}", value)
                                   : show_quantity(value, quantity_of(key), digits);
}

void fill_range(const Key& key, const std::vector<std::string>& ends, Vary& vary) {
    const bool counted = key.kind == Kind::count;
    const Quantity quantity = quantity_of(key);
    const auto whole = [&](const std::string& text, double number) {
        if (counted && std::floor(number) != number)
            throw InputError(
                fmt::format("{} is told in whole numbers, which {} is not", key.name, text));
        return number;
    };
    const double from = whole(ends[0], parse_quantity(ends[0], quantity)),
                 to = whole(ends[1], parse_quantity(ends[1], quantity));
    if (ends.size() == 2) {
        if (!(from < to)) throw InputError("a range goes up, from its lower to its higher end");
        vary.span = {from, to};
        return;
    }
    const double step = whole(ends[2], parse_difference(ends[2], quantity));
    if (!(step > 0) || to < from)
        throw InputError("a range goes up, by a step over nothing: FROM:TO:STEP");
    const double count = std::floor((to - from) / step + 1e-9) + 1;
    if (count > static_cast<double>(most_variants))
        throw InputError("the range has more than a million steps");
    for (std::size_t i = 0; i < static_cast<std::size_t>(count); ++i)
        vary.values.push_back(value_text_of(key, from + static_cast<double>(i) * step));
}

}  // namespace

Vary parse_vary(std::string_view text) {
    const std::size_t equals = text.find('=');
    if (equals == 0 || equals == std::string_view::npos)
        throw InputError(
            fmt::format("--vary {}: write KEY=FROM:TO:STEP or KEY=FIRST,SECOND,...", text));
    std::string key(text.substr(0, equals));
    std::erase(key, ' ');
    known_key(key, "--vary " + key);
    return parse_values(key, text.substr(equals + 1), fmt::format("--vary {}", text));
}

Vary parse_values(const std::string& name, std::string_view values, std::string_view typed) {
    const Key& key = known_key(name, typed);
    Vary vary{name, {}, {}};
    const std::vector<std::string> ends = split(values, ':');
    try {
        if (is_range(key, values, ends.size()))
            fill_range(key, ends, vary);
        else
            vary.values = listed(key, values);
    } catch (const InputError& error) {
        throw InputError(fmt::format("{}: {}", typed, error.what()));
    }
    if (std::find(vary.values.begin(), vary.values.end(), "") != vary.values.end())
        throw InputError(fmt::format("{}: a value is empty", typed));
    return vary;
}

std::vector<Vary> parse_varies(const std::vector<std::string>& texts) {
    std::vector<Vary> varies;
    for (const std::string& text : texts) {
        Vary vary = parse_vary(text);
        for (const Vary& earlier : varies)
            if (earlier.key == vary.key)
                throw InputError(
                    fmt::format("--vary {}: {} is varied already; say all its values "
                                "in one --vary, parted by commas",
                                text, vary.key));
        varies.push_back(std::move(vary));
    }
    return varies;
}

std::vector<Variant> grid_of(const std::vector<Vary>& varies) {
    std::size_t count = 1;
    for (const Vary& vary : varies) {
        if (vary.span)
            throw InputError("--vary " + vary.key +
                             ": say the step too, FROM:TO:STEP, or how many to --sample");
        count *= vary.values.size();
        if (count > most_variants) throw InputError("that makes more than a million variants");
    }
    std::vector<Variant> all(count);
    for (std::size_t i = 0; i < count; ++i) {
        std::size_t rest = i;
        for (std::size_t v = varies.size(); v-- > 0;) {
            const Vary& vary = varies[v];
            const std::string& value = vary.values[rest % vary.values.size()];
            rest /= vary.values.size();
            all[i].settings.insert(all[i].settings.begin(), {vary.key, value, ""});
        }
    }
    return all;
}

std::vector<Variant> sample_of(const std::vector<Vary>& varies, std::size_t count,
                               std::uint64_t seed) {
    if (varies.empty()) throw InputError("--sample needs a --vary KEY=FROM:TO");
    if (count > most_variants) throw InputError("that makes more than a million variants");
    const auto points = sobol_points(count, varies.size(), seed);
    std::vector<Variant> all(count);
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t v = 0; v < varies.size(); ++v) {
            const Vary& vary = varies[v];
            const double share = points[i][v];
            std::string value;
            if (vary.span)
                value = value_text_of(
                    *find_key(vary.key).key,
                    vary.span->first + share * (vary.span->second - vary.span->first));
            else
                value = vary.values[static_cast<std::size_t>(
                    share * static_cast<double>(vary.values.size()))];
            all[i].settings.push_back({vary.key, value, ""});
        }
    return all;
}

}  // namespace drawwell

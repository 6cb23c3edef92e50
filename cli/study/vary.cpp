#include "cli/study/vary.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/keys.h"
#include "cli/read/suggest_key.h"
#include "cli/read/units.h"
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

std::string value_text_of(const Key& key, double value) {
    return key.kind == Kind::count ? fmt::format("{:.0f}", value)
                                   : show_quantity(value, key.quantity, digits);
}

void fill_range(const Key& key, const std::vector<std::string>& ends, Vary& vary) {
    const auto number = [&](const std::string& text) {
        return parse_quantity(text, key.kind == Kind::count ? Quantity::number : key.quantity);
    };
    const double from = number(ends[0]), to = number(ends[1]);
    if (ends.size() == 2) {
        if (!(from < to)) throw InputError("a range goes up, from its lower to its higher end");
        vary.span = {from, to};
        return;
    }
    // A step is a difference; of degrees, a step of 10 °C is one of 10 K.
    const double zero =
        key.quantity == Quantity::temperature ? parse_quantity("0 °C", key.quantity) : 0;
    const double step = number(ends[2]) - zero;
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
    Vary vary;
    vary.key = text.substr(0, equals);
    std::erase(vary.key, ' ');
    const Key& key = known_key(vary.key, "--vary " + vary.key);
    const std::string_view values = text.substr(equals + 1);
    const std::vector<std::string> ends = split(values, ':');
    const bool measured = key.kind == Kind::quantity || key.kind == Kind::count;
    try {
        if (measured && (ends.size() == 2 || ends.size() == 3))
            fill_range(key, ends, vary);
        else
            vary.values = split(values, values.find(';') == std::string_view::npos ? ',' : ';');
    } catch (const InputError& error) {
        throw InputError(fmt::format("--vary {}: {}", text, error.what()));
    }
    if (std::find(vary.values.begin(), vary.values.end(), "") != vary.values.end())
        throw InputError(fmt::format("--vary {}: a value is empty", text));
    return vary;
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

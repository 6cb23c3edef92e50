#include "cli/report/stretched_text.h"

#include <fmt/format.h>

#include <cmath>

#include "cli/read/units.h"
#include "cli/report/page_text.h"

namespace drawwell {
namespace {

/// Three digits that count, without a unit.
std::string number_text(double value) {
    if (!(value > 0)) return fmt::format("{:g}", value);
    const double step = std::pow(10, std::floor(std::log10(value)) - 2);
    const double rounded = std::round(value / step) * step;
    return value < 1e6 ? fmt::format("{:g}", rounded) : fmt::format("{:.0e}", value);
}

std::string value_text(const Stretched& stretched, double value, UnitSystem system) {
    if (stretched.unit == "K") return show_temperature(value, system);
    return stretched.unit.empty() ? number_text(value) : number_text(value) + " " + stretched.unit;
}

std::string held_text(const Stretched& stretched, UnitSystem system) {
    const std::string low = value_text(stretched, stretched.low, system);
    if (!std::isfinite(stretched.high)) return low + " up";
    return fmt::format("{} to {}", low, value_text(stretched, stretched.high, system));
}

/// What a number without a unit says of the gas or the face; empty: it is plain already.
std::string_view in_plain_words(const Stretched& stretched) {
    const bool below = stretched.worst < stretched.low;
    if (stretched.what == "Reynolds number")
        return below ? "gas that runs slower or narrower" : "gas that runs faster or wider";
    if (stretched.what == "Rayleigh number")
        return below ? "a smaller or cooler face" : "a larger or hotter face";
    if (stretched.what.starts_with("heat^0.4"))
        return below ? "a smaller fire for its width" : "a larger fire for its width";
    if (stretched.what == "Prandtl number") return "another kind of gas";
    return "";
}

}  // namespace

std::string stretched_text(const Stretched& stretched, UnitSystem system) {
    const std::string worst = value_text(stretched, stretched.worst, system);
    const std::string share =
        fmt::format("{:.0f} % of the time", to_percent(stretched.share_of_burn));
    if (!stretched.where.empty())
        return fmt::format("{} up to {}; {} is {} to {} ({})", stretched.where, worst,
                           stretched.law,
                           stretched.what == "service temperature" ? "sold" : "tabled",
                           value_text(stretched, stretched.high, system), share);
    const std::string law = stretched.on + (stretched.on.empty() ? "" : ": ") + stretched.law;
    const std::string held = held_text(stretched, system);
    const std::string_view plain = in_plain_words(stretched);
    if (plain.empty())
        return fmt::format("{}, used at {} {}, known from {} ({})", law, stretched.what, worst,
                           held, share);
    return fmt::format("{}, used for {} ({} {}, known from {}; {})", law, plain, stretched.what,
                       worst, held, share);
}

std::vector<std::string> stretched_points(const Summary& summary, UnitSystem system) {
    std::vector<std::string> points;
    std::string small;
    for (const Stretched& stretched : summary.stretched) {
        if (stretched.effect == Effect::judge_with_care)
            points.push_back(stretched_text(stretched, system));
        if (stretched.effect != Effect::small) continue;
        const std::string name =
            stretched.where.empty() ? stretched.law : stretched.where + " (" + stretched.law + ")";
        if (small.find(name) == std::string::npos) small += (small.empty() ? "" : ", ") + name;
    }
    if (!small.empty())
        points.push_back("beyond what they are known for, to small effect: " + small);
    return points;
}

std::string effect_name(Effect effect) {
    switch (effect) {
        case Effect::small:
            return "small";
        case Effect::judge_with_care:
            return "judge with care";
        case Effect::nothing:
            break;
    }
    return "nothing";
}

}  // namespace drawwell

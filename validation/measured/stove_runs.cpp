#include "validation/measured/stove_runs.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/embedded_data.h"
#include "cli/read/overrides.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "solver/constants.h"
#include "validation/compare.h"

namespace drawwell {
namespace {

constexpr double most_counted = 0.25;  // [-] of the band's bound, however wide the spread

Stove stove_of(const Setup& setup, const Library& library) {
    std::vector<Override> overrides{parse_override("burn.reserve_every=0 s"),
                                    parse_override("burn.sustained_every=0 s")};
    for (const std::string& text : setup.overrides) overrides.push_back(parse_override(text));
    return read_stove(setup.text, "stove", overrides, library);
}

void raise(Uncertain& figure) {
    figure.value *= 1 + figure.spread;
}

/// data/ with one input of each moved by its standard deviation.
std::vector<Library> moved_libraries() {
    std::vector<Library> moved(6, standard_library());
    raise(moved[0].bed.surface_rate);
    raise(moved[1].bed.char_area);
    raise(moved[2].bed.flame_length_factor);
    raise(moved[3].bed.radiant_fraction);
    for (auto& [name, material] : moved[4].materials) {
        std::vector<double> conductivity = material.conductivity.y();
        for (double& k : conductivity) k *= 1 + material.conductivity_spread;
        material.conductivity = Table(material.conductivity.x(), conductivity);
    }
    for (auto& [name, material] : moved[5].materials)
        material.emissivity = std::min(1.0, material.emissivity * (1 + material.emissivity_spread));
    return moved;
}

Comparison judged(const Band& band) {
    const std::string measured = std::isinf(band.low)    ? fmt::format("at most {:.4g}", band.high)
                                 : std::isinf(band.high) ? fmt::format("at least {:.4g}", band.low)
                                 : band.low == band.high
                                     ? fmt::format("{:.4g}", band.low)
                                     : fmt::format("{:.4g} to {:.4g}", band.low, band.high);
    const auto& [value, spread] = band.figure;
    const double bound = std::max(std::isinf(band.low) ? 0 : std::abs(band.low),
                                  std::isinf(band.high) ? 0 : std::abs(band.high));
    const double outside = std::max({0.0, band.low - value, value - band.high});
    return {band.name, fmt::format("{}: {}, outside by", band.metric, measured), outside,
            std::min(spread, most_counted * bound), fmt::format("{:.4g} +- {:.2g}", value, spread)};
}

}  // namespace

const Library& standard_library() {
    static const Library library = read_library();
    return library;
}

Setup sample(std::string_view name) {
    return {std::string(embedded_data(fmt::format("stoves/{}.toml", name)))};
}

Setup Setup::with(const std::vector<std::string>& more) const {
    Setup setup = *this;
    setup.overrides.insert(setup.overrides.end(), more.begin(), more.end());
    return setup;
}

BurnOutcome burn(const Setup& setup, const Library& library) {
    return run_burn(stove_of(setup, library), library);
}

DrawStudy draw_at(const Setup& setup, double time, const Library& library) {
    return study_draw(stove_of(setup, library), library, time);
}

std::vector<Figure> with_spread(const Figures& figures) {
    std::vector<Figure> spread;
    for (const double value : figures(standard_library())) spread.push_back({value, 0});
    for (const Library& library : moved_libraries()) {
        const std::vector<double> moved = figures(library);
        for (std::size_t i = 0; i < spread.size(); ++i)
            spread[i].spread = std::hypot(spread[i].spread, moved[i] - spread[i].value);
    }
    return spread;
}

void compare_band(const Band& band) {
    compare(judged(band));
}

void show_band(const Band& band, std::string_view why) {
    show(judged(band), why);
}

double celsius(double kelvin) {
    return kelvin - constants::ice_point;
}

}  // namespace drawwell

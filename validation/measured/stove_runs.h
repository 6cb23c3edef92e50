#pragma once

#include <functional>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "models/burn.h"
#include "models/draw_study.h"

namespace drawwell {

/// data/ as it stands, read once.
const Library& standard_library();

/// A stove file's text with keys overridden (`riser.top=1 m`).
struct Setup {
    std::string text;
    std::vector<std::string> overrides = {};

    Setup with(const std::vector<std::string>& more) const;
};

/// A sample of data/stoves/, by its file's name without ending.
Setup sample(std::string_view name);

/// Burns it; without spare draw and sustained push, unless a key asks for them.
BurnOutcome burn(const Setup& setup, const Library& library = standard_library());

/// Its draw at a time [s].
DrawStudy draw_at(const Setup& setup, double time, const Library& library = standard_library());

/// A figure of drawwell's, and how far it may well be off.
struct Figure {
    double value = 0;
    double spread = 0;
};

/// Figures of a run with data/ as it stands, each with its spread: the run is repeated with one
/// uncertain input at a time moved up by one standard deviation, and the shifts are added as roots
/// of sums of squares. Moved are the wood's surface rate, the embers' area, the flame's length, the
/// radiant fraction, all conductivities together and all emissivities together. What the laws
/// themselves leave open (films, losses) is not in it.
using Figures = std::function<std::vector<double>(const Library& library)>;
std::vector<Figure> with_spread(const Figures& figures);

inline constexpr double unbounded = std::numeric_limits<double>::infinity();

/// A figure beside the band that somebody measured, judged by how far it lies outside. What passes
/// is a figure whose own spread reaches the band, of which at most a quarter of the band's larger
/// bound counts: a figure may not hold by knowing nothing.
struct Band {
    std::string name;    // of the case
    std::string metric;  // what it is, and its unit: `lid [degC]`
    double low = -unbounded, high = unbounded;
    Figure figure;
};

void compare_band(const Band& band);
/// The same without failing, for a miss that is known, and why it misses.
void show_band(const Band& band, std::string_view why);

/// Kelvin as degrees Celsius.
double celsius(double kelvin);

}  // namespace drawwell

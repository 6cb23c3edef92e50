#pragma once

#include "models/fittings/kind.h"

namespace drawwell {

/// A pane of ceramic glass in the side of the firebox, beside the fire.
struct Window {
    static constexpr std::string_view table = "window";
    static constexpr std::string_view axis_meaning =
        "height of the pane's centre over the tunnel floor";
    std::string name;
    double width = 0, height = 0;  // [m]
    double thickness = 0;          // [m]

    double position() const { return height / 2; }
    static std::span<const ColumnInfo> columns();
};

/// Share [-] of a black body's radiation below a wavelength [m] at a temperature [K]: Planck's law
/// integrated as a series.
double black_share_below(double wavelength, double temperature);

/// Share [-] of a black body's radiation at a temperature [K] that a pane lets through: 85 % up to
/// 2.7 um, 30 % from there to 4.2 um, nothing beyond (ceramic glass of 4 mm, from memory, +-10 %).
double let_through(double temperature);

/// No tunnel for a side to stand in, or more pane than side.
std::vector<FittingProblem> problems(const Window& window, const Stove& stove);

/// Puts the pane into the tunnel's side by the fire; the tunnel must be there already.
void add_fitting(StoveBuilder& builder, const Window& window);

/// How hot the pane gets, and what shines through. `at`: which of the windows it is.
std::vector<FittingAnswer> answers(const Window& window, const Stove& stove, std::size_t at,
                                   const Results& results);

}  // namespace drawwell

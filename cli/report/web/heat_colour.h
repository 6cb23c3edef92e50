#pragma once

#include <array>
#include <string>
#include <string_view>

namespace drawwell {

/// Anchors of the scale in which the page paints temperatures: the hotter, the lighter, so that the
/// order shows without telling hues apart. Straight between them.
struct HeatAnchor {
    double celsius = 0;
    std::array<int, 3> rgb{};
};
inline constexpr std::array<HeatAnchor, 9> heat_scale{{{0, {22, 33, 58}},
                                                       {100, {58, 42, 102}},
                                                       {200, {109, 42, 120}},
                                                       {300, {160, 47, 107}},
                                                       {400, {203, 67, 80}},
                                                       {600, {238, 111, 46}},
                                                       {800, {249, 167, 31}},
                                                       {1000, {251, 217, 91}},
                                                       {1200, {255, 251, 224}}}};

/// The colour of a temperature, `#a1b2c3`; grey of what is no number.
std::string heat_colour(double celsius);

/// A band that a plate cooks in, and its colour: lighter the hotter.
struct CookingBand {
    double from = 0;  // [°C]
    std::string_view name, colour;
};
inline constexpr std::array<CookingBand, 7> cooking_bands{{{-273.15, "cold", "#16213a"},
                                                           {60, "keeps warm", "#3f3478"},
                                                           {120, "simmers", "#8a3480"},
                                                           {175, "fries", "#cf4a55"},
                                                           {230, "sears", "#f08a2c"},
                                                           {300, "over 300 °C", "#f7c548"},
                                                           {400, "over 400 °C", "#fff6cf"}}};

/// Which of them a temperature [°C] lies in; 0 for what is no number.
std::size_t cooking_band(double celsius);

}  // namespace drawwell

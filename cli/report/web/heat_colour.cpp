#include "cli/report/web/heat_colour.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace drawwell {

std::string heat_colour(double celsius) {
    if (!std::isfinite(celsius)) return "#808080";
    const double t = std::clamp(celsius, heat_scale.front().celsius, heat_scale.back().celsius);
    std::size_t i = 1;
    while (i + 1 < heat_scale.size() && heat_scale[i].celsius < t) ++i;
    const HeatAnchor &low = heat_scale[i - 1], &high = heat_scale[i];
    const double share = (t - low.celsius) / (high.celsius - low.celsius);
    std::array<int, 3> rgb{};
    for (std::size_t c = 0; c < 3; ++c)
        rgb[c] = static_cast<int>(std::lround(low.rgb[c] + share * (high.rgb[c] - low.rgb[c])));
    return fmt::format("#{:02x}{:02x}{:02x}", rgb[0], rgb[1], rgb[2]);
}

std::size_t cooking_band(double celsius) {
    std::size_t band = 0;
    if (!std::isfinite(celsius)) return band;
    while (band + 1 < cooking_bands.size() && celsius >= cooking_bands[band + 1].from) ++band;
    return band;
}

}  // namespace drawwell

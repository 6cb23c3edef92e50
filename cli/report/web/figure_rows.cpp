#include "cli/report/web/figure_rows.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "cli/report/web/kept_rows.h"
#include "cli/report/web/likely_bar.h"

namespace drawwell {
namespace {

constexpr double line_width = 0.002;  // [-] of a figure's height, half a pixel of it; our choice

}  // namespace

std::vector<std::size_t> figure_rows(const PageRun& run, const PagePanel& panel, std::size_t most) {
    double least = std::numeric_limits<double>::infinity(), greatest = -least;
    std::vector<LikelyBand> bands;
    for (const ShownSeries& series : panel.shown.series) {
        for (const double value : series.values)
            if (std::isfinite(value)) {
                least = std::min(least, value);
                greatest = std::max(greatest, value);
            }
        if (auto band = likely_band(run, series)) bands.push_back(std::move(*band));
    }
    const double near = std::max(line_width * (greatest - least), 1e-12);  // of a level line
    std::vector<Track> tracks;
    for (const ShownSeries& series : panel.shown.series) tracks.push_back({series.values, 1, near});
    for (const LikelyBand& band : bands)
        for (const std::vector<double>* edge : {&band.low, &band.high})
            tracks.push_back({*edge, 1, near});
    return kept_rows(tracks, run.burn.results.time, most);
}

}  // namespace drawwell

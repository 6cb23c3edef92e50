#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace drawwell {

/// Values that are thinned together: `width` of them at each instant, time-major.
struct Track {
    std::span<const double> values;
    std::size_t width = 1;
    double near = 1;  // how far off [their unit] a straight line between kept instants may be, > 0
};

/// Which instants of a long burn a figure needs: at most `most` of them, in order, the first and
/// the last among them; all, if they are few enough. The burn is parted into stretches of as many
/// rows each; of each stretch stay those where any value is at its highest or lowest there, so that
/// no peak, however short, is lost, and the first that is no number, so that gaps stay gaps. Then
/// come those at which straight lines between the kept ones are farthest off, until they are near
/// enough everywhere. Three rows for each value and the ends stay in any case.
std::vector<std::size_t> kept_rows(std::span<const Track> tracks, const std::vector<double>& time,
                                   std::size_t most);

/// Which instants a picture needs that is drawn anew for any moment, by straight lines between
/// them: the first and the last, those on both sides of each event [s] and of each gap in the
/// numbers, some evenly spread in time, then those at which the lines are farthest off, until
/// they are near enough everywhere or there are `most`. Where events and gaps alone would fill more
/// than half of that, only some of them get rows for their own sake.
std::vector<std::size_t> frame_rows(std::span<const Track> tracks, const std::vector<double>& time,
                                    std::span<const double> events, std::size_t most);

}  // namespace drawwell

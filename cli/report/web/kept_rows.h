#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace drawwell {

/// Which instants of a long burn a screen needs: at most `most` of them, in order, the first and
/// the last among them. The rows are parted into stretches of equal length; of each stretch stay
/// those where any of the series is at its highest or lowest there, so that no peak, however short,
/// is lost, and the first that is not a number, so that gaps stay gaps. All of them, if they are
/// few enough. Every series has `rows` values; three rows a series and the ends stay in any case.
std::vector<std::size_t> kept_rows(std::span<const std::span<const double>> series,
                                   std::size_t rows, std::size_t most);

}  // namespace drawwell

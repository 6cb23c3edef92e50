#include "cli/report/web/kept_rows.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <queue>
#include <set>

namespace drawwell {
namespace {

/// Adds the rows of [from, to) in which one value is at its highest, lowest, or no number.
void keep_extremes(std::set<std::size_t>& kept, const Track& track, std::size_t cell,
                   std::size_t from, std::size_t to) {
    std::optional<std::size_t> lowest, highest, gap;
    const auto value = [&](std::size_t row) { return track.values[row * track.width + cell]; };
    for (std::size_t row = from; row < to; ++row) {
        if (!std::isfinite(value(row))) {
            if (!gap) gap = row;
            continue;
        }
        if (!lowest || value(row) < value(*lowest)) lowest = row;
        if (!highest || value(row) > value(*highest)) highest = row;
    }
    for (const auto& row : {lowest, highest, gap})
        if (row) kept.insert(*row);
}

/// Rows between two kept ones, and the one of them that is farthest off the straight line.
struct Between {
    std::size_t from = 0, to = 0, worst = 0;
    double off = 0;  // in units of what is near enough
};

class Lines {
  public:
    Lines(std::span<const Track> tracks, const std::vector<double>& time)
        : tracks_(tracks), time_(time) {}

    /// Adds rows, the farthest off first, until all are near enough or `most` are kept.
    void refine(std::set<std::size_t>& kept, std::size_t most) const {
        const auto nearer = [](const Between& a, const Between& b) { return a.off < b.off; };
        std::priority_queue<Between, std::vector<Between>, decltype(nearer)> queue(nearer);
        for (auto at = kept.begin(); std::next(at) != kept.end(); ++at)
            queue.push(between(*at, *std::next(at)));
        while (kept.size() < most && !queue.empty() && queue.top().off > 1) {
            const Between worst = queue.top();
            queue.pop();
            kept.insert(worst.worst);
            queue.push(between(worst.from, worst.worst));
            queue.push(between(worst.worst, worst.to));
        }
    }

  private:
    Between between(std::size_t from, std::size_t to) const {
        Between gap{from, to, from, 0};
        for (std::size_t row = from + 1; row < to; ++row) {
            const double share = (time_[row] - time_[from]) / (time_[to] - time_[from]);
            for (const Track& track : tracks_)
                for (std::size_t cell = 0; cell < track.width; ++cell) {
                    const auto value = [&](std::size_t of) {
                        return track.values[of * track.width + cell];
                    };
                    const double line = value(from) + share * (value(to) - value(from));
                    const double off = std::abs(value(row) - line) / track.near;
                    if (std::isfinite(off) && off > gap.off) gap = {from, to, row, off};
                }
        }
        return gap;
    }

    std::span<const Track> tracks_;
    const std::vector<double>& time_;
};

/// The rows on both sides of each gap in the numbers.
std::set<std::size_t> edges_of_gaps(std::span<const Track> tracks, std::size_t rows) {
    std::set<std::size_t> edges;
    for (const Track& track : tracks)
        for (std::size_t i = track.width; i < rows * track.width; ++i)
            if (std::isfinite(track.values[i]) != std::isfinite(track.values[i - track.width])) {
                edges.insert(i / track.width - 1);
                edges.insert(i / track.width);
            }
    return edges;
}

std::vector<std::size_t> every_row(std::size_t rows) {
    std::vector<std::size_t> all(rows);
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

}  // namespace

std::vector<std::size_t> kept_rows(std::span<const Track> tracks, const std::vector<double>& time,
                                   std::size_t most) {
    const std::size_t rows = time.size();
    if (rows <= most || rows < 3) return every_row(rows);
    std::size_t values = 0;
    for (const Track& track : tracks) values += track.width;
    // Up to three rows of each value in each stretch, and the two ends; as many again to refine.
    const std::size_t of_a_stretch = std::max<std::size_t>(3 * values, 1);
    const std::size_t stretches =
        std::max<std::size_t>((std::max<std::size_t>(most, 2) / 2 - 1) / of_a_stretch, 1);
    std::set<std::size_t> kept{0, rows - 1};
    for (std::size_t i = 0; i < stretches; ++i)
        for (const Track& track : tracks)
            for (std::size_t cell = 0; cell < track.width; ++cell)
                keep_extremes(kept, track, cell, i * rows / stretches, (i + 1) * rows / stretches);
    Lines(tracks, time).refine(kept, most);
    return {kept.begin(), kept.end()};
}

std::vector<std::size_t> frame_rows(std::span<const Track> tracks, const std::vector<double>& time,
                                    std::span<const double> events, std::size_t most) {
    const std::size_t rows = time.size();
    if (rows < 3) return every_row(rows);
    std::set<std::size_t> asked = edges_of_gaps(tracks, rows);
    for (const double event : events) {
        const auto after = std::lower_bound(time.begin(), time.end(), event);
        if (after == time.end() || after == time.begin()) continue;
        const auto row = static_cast<std::size_t>(after - time.begin());
        asked.insert(row - 1);
        asked.insert(row);
        if (*after == event && row + 1 < rows) asked.insert(row + 1);
    }
    std::set<std::size_t> kept{0, rows - 1};
    const std::size_t one_in = asked.size() / std::max<std::size_t>(most / 2, 1) + 1;
    std::size_t count = 0;
    for (const std::size_t row : asked)
        if (count++ % one_in == 0) kept.insert(row);
    const std::size_t even = std::max<std::size_t>(most / 4, 2);
    const double whole = time.back() - time.front();
    for (std::size_t i = 1; i + 1 < even && kept.size() < most; ++i) {
        const double at =
            time.front() + whole * static_cast<double>(i) / static_cast<double>(even - 1);
        const auto row = std::lower_bound(time.begin(), time.end(), at) - time.begin();
        kept.insert(std::min(static_cast<std::size_t>(row), rows - 1));
    }
    Lines(tracks, time).refine(kept, most);
    return {kept.begin(), kept.end()};
}

}  // namespace drawwell

#pragma once

#include <mutex>
#include <span>
#include <string>
#include <unordered_map>

#include "cli/report/likely_ranges.h"
#include "cli/study/row.h"

namespace drawwell {

/// What days are kept of until bands are made of them: the columns that a report draws bands of,
/// their first cells only. These are few enough for memory to hold a thousand days.
class DaySeries {
  public:
    /// Keeps those of a day's series; nothing, if it failed. May be called by several threads.
    void keep(const Row& day);
    /// Those of that day. logic_error: they were never kept.
    const Results& of(const Row& day) const;

  private:
    std::unordered_map<std::string, Results> days_;  // by identity
    std::mutex keeping_;
};

/// Adds where the columns that a report draws lie on nine days of ten, moment by moment; days that
/// failed are left out. logic_error: the series of another day are missing, or are of other
/// instants, so that the bands would be too narrow.
void add_bands(LikelyRanges& ranges, std::span<const Row> days, const DaySeries& series);

}  // namespace drawwell

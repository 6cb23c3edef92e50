#pragma once

#include <span>

#include "cli/report/likely_ranges.h"
#include "cli/study/row.h"
#include "cli/study/series_store.h"

namespace drawwell {

/// Adds where the columns that a report draws lie on nine days of ten, moment by moment, from the
/// series of those days; days that failed are left out. FileError: a series is damaged.
void add_bands(LikelyRanges& ranges, std::span<const Row> days, const SeriesStore& store);

}  // namespace drawwell

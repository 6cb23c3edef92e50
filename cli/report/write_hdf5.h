#pragma once

#include <filesystem>

#include "cli/report/likely_ranges.h"
#include "cli/report/run_record.h"
#include "cli/report/schema_versions.h"
#include "models/saved_state.h"
#include "models/summary.h"
#include "solver/results.h"

namespace drawwell {

/// Writes a burn as HDF5: a data set per column over `time` and its axis (both dimension scales),
/// in SI and kelvin with `units` and `long_name`; the answers as attributes of the group `summary`
/// (absent: never happened); where it came from as attributes of the root; the state it ended in,
/// if given, as the group `end_state`; what the answers likely are, if days were computed, as the
/// group `likely`. The file replaces an earlier one only when it is whole.
/// Equal runs give equal bytes, but for `created`, `started_from_created` and `wall_clock_s`.
/// FileError: the file could not be written.
void write_hdf5(const std::filesystem::path& file, const Results& results, const Summary& summary,
                const RunRecord& record, const SavedState* end_state = nullptr,
                const LikelyRanges& likely = {});

}  // namespace drawwell

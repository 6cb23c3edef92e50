#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "cli/report/likely_ranges.h"
#include "cli/report/run_record.h"
#include "models/summary.h"
#include "solver/results.h"

namespace drawwell {

/// A burn as its result file keeps it.
struct BurnResult {
    Results results;
    Summary summary;  // without fittings and stretched laws
    RunRecord record;
    std::vector<std::string> with_care;     // stretched laws to be judged with care, in words
    std::vector<std::string> small_effect;  // those of small effect
    LikelyRanges likely;
};

/// Reads what `write_hdf5` wrote. FileError: the file cannot be read. InputError: it is no result
/// of this program, of another schema version, or damaged.
BurnResult read_result(const std::filesystem::path& file);

}  // namespace drawwell

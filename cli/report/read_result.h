#pragma once

#include <filesystem>
#include <string>
#include <string_view>
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

/// Reads what `write_hdf5` wrote, also that of any older drawwell. FileError: the file cannot be
/// read. InputError: it is no result of this program, of a later schema version, or damaged.
BurnResult read_result(const std::filesystem::path& file);

/// FileError: the file cannot be read. InputError: it is no result of a burn; the message says that
/// it cannot be used `what_for` ("show").
void require_result(const std::filesystem::path& file, std::string_view what_for);

/// A message on a result in a layout that came after this program; `what` begins it.
std::string later_layout(const std::string& what, int version, const std::string& program);

}  // namespace drawwell

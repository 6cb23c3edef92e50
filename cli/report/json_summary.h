#pragma once

#include <filesystem>
#include <string>

#include "cli/report/run_record.h"
#include "models/summary.h"

namespace drawwell {

/// The answers as one JSON object, indented, ending in a newline. null: it never happened, or the
/// stove has no such part. `result_file` is null when that path is empty.
std::string json_summary(const Summary& summary, const RunRecord& record,
                         const std::filesystem::path& result_file = {});

}  // namespace drawwell

#pragma once

#include <filesystem>
#include <string>

#include "cli/report/run_record.h"
#include "models/draw_study.h"

namespace drawwell {

/// The draw at one instant and what it answers as one JSON object ending in a newline; names end
/// in their unit. null: there is no such thing. `figure` is null when that path is empty.
std::string draw_json(const DrawStudy& study, const RunRecord& record,
                      const std::filesystem::path& figure = {});

}  // namespace drawwell

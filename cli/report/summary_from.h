#pragma once

#include <map>
#include <string>

#include "models/summary.h"

namespace drawwell {

/// The figures of a summary as a result file keeps them, by the keys of `summary_entries`.
struct SummaryFigures {
    std::map<std::string, double> numbers;
    std::map<std::string, std::string> words;
};

/// The summary that had these entries: `summary_entries` of it gives them again. What has no entry
/// (remarks, fittings, stretched laws) is empty. Words that are none of an answer's count as
/// absent.
Summary summary_from(const SummaryFigures& figures);

}  // namespace drawwell

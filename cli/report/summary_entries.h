#pragma once

#include <array>
#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "models/summary.h"

namespace drawwell {

/// What an answer of a few words may say, in the order of its enumeration.
inline constexpr std::array<std::string_view, 3> limit_words{"short_push", "lasting_push",
                                                             "exchange"};
inline constexpr std::array<std::string_view, 3> leaning_words{"falls", "stands", "rises"};

/// An answer by the name that other programs know it by. The name's suffix is its unit.
struct SummaryEntry {
    std::string_view key;  // `plate_centre_max_c`
    /// Monostate: never happened. A text is one of a few words.
    std::variant<std::monostate, bool, std::size_t, double, std::string_view> value;
};

/// Every figure of a summary, answers first; the one list behind JSON and result files.
/// `wall_clock_s` comes last: the only one that differs between equal runs.
std::vector<SummaryEntry> summary_entries(const Summary& summary);

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

#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "cli/report/likely_ranges.h"
#include "cli/report/page_writer.h"
#include "cli/study/headline.h"
#include "cli/study/run_rows.h"

namespace drawwell {

/// What an answer likely is, over days and fires.
struct LikelyRange {
    double low = 0, median = 0, high = 0;  // 5, 50 and 95 % of the days lie below
    std::size_t days = 0;                  // that have the answer
};

/// Value below which a share [-] of them lies, linear between two; sorted, not empty.
double quantile_of(const std::vector<double>& sorted, double share);

/// The range of an answer over rows; days 0: none of them has it.
LikelyRange likely_range(std::span<const Row> days, std::string_view answer);

/// Days of those rows on which something holds, `draws`.
std::size_t days_with(std::span<const Row> days, std::string_view answer);

/// Computed days on which the burn was too short to judge whether it draws.
std::size_t days_unjudged(std::span<const Row> days);

/// A row for each stove of a study over days: its answers the medians, with `_low` and `_high`
/// beside them; `draws` where it does on more than half of those that could be judged, and on how
/// many; failed where all days did.
std::vector<Row> median_rows(const Study& study, const std::vector<Row>& rows);

/// The rows of one stove's days.
std::span<const Row> days_of(const Study& study, const std::vector<Row>& rows, std::size_t stove);

/// What stands under a median in a table: `4.1-8.9`, of `draws` on how many days; empty where the
/// answer is a word or never happened.
std::string range_text(std::span<const Row> days, const Headline& headline);

/// The same for every answer, as a result keeps it.
LikelyRanges likely_ranges(std::span<const Row> days);

/// Lines under a burn's page: how often it draws, each headline's median and range.
std::string likely_page(std::span<const Row> days, bool colour,
                        UnitSystem system = UnitSystem::metric);
void tell_likely(std::span<const Row> days, Page& page, UnitSystem system = UnitSystem::metric);

/// A burn's JSON with a member `likely` more: `days`, `draws_on`, `unjudged`, and for each answer
/// `low`, `median`, `high`.
std::string with_likely(const std::string& json, std::span<const Row> days);

}  // namespace drawwell

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "solver/results.h"

namespace drawwell {

/// What an answer likely is over days and fires, in the unit at the end of its name.
struct LikelyFigure {
    std::string answer;                    // `plate_centre_max_c`
    double low = 0, median = 0, high = 0;  // 5, 50 and 95 % of the days lie below
};

/// What a burn's answers likely are on other days and fires (`burn --likely`); days 0: nobody
/// asked.
struct LikelyRanges {
    std::size_t days = 0;
    std::size_t draws_on = 0, smoke_on = 0;  // of them
    std::vector<LikelyFigure> figures = {};
    /// Of some columns, moment by moment, what 5 % and 95 % of the days lie below, at the burn's
    /// own instants and named as in it, one value an instant: the first cell's. Empty: not kept.
    Results low = {}, high = {};
    std::size_t unjudged = 0;  // days on which it burned too short to judge whether it draws

    const LikelyFigure* find(std::string_view answer) const;
};

}  // namespace drawwell

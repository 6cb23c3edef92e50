#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "cli/study/condition.h"
#include "cli/study/row.h"

namespace drawwell {

/// Where a value is sought, and for what.
struct Search {
    double low = 0, high = 0;      // SI
    std::vector<Condition> where;  // all must hold
    enum class Goal { smallest, largest, target } goal = Goal::smallest;
    std::optional<Condition> target;  // an answer that is to equal a value
    double fine = 1e-3;               // of the span, to which it is found
};

/// The rows of stoves with these values, in their order; the search says several at once so that
/// all cores work.
using RowsOf = std::function<std::vector<Row>(std::span<const double> values)>;

/// One place where what was sought holds, with the row there.
struct Found {
    double value = 0;  // SI
    Row row;
    bool at_end = false;  // it holds already at that end of the span
};

/// What a search came to.
struct Findings {
    std::vector<Found> found;                             // the answer first, then others
    std::vector<std::pair<double, double>> holds_within;  // stretches of the span, as far as seen
    std::optional<Found> nearest;                         // where nothing holds: least far off
    std::vector<std::string> failures;                    // of stoves that could not be computed
};

/// Looks at seventeen values over the span, then closes in on each edge between one that holds and
/// one that does not, or on each crossing of the target (Boost.Math's bracketed roots). Edges
/// closer together than a sixteenth of the span can be missed.
Findings find_value(const Search& search, const RowsOf& rows_of);

}  // namespace drawwell

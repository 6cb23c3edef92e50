#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "cli/study/condition.h"
#include "cli/study/row.h"

namespace drawwell {

/// Values of several keys together, in their order [SI].
using Point = std::vector<double>;

/// Where values are sought, and for what.
struct SeveralSearch {
    Point low, high;               // of each key
    std::vector<Condition> where;  // all must hold
    /// Of the first key the smallest or largest; or, to meet a target, the least change of all from
    /// `from`, each as a share of its span.
    enum class Goal { smallest, largest, target } goal = Goal::smallest;
    std::optional<Condition> target;  // an answer that is to equal a value
    Point from;
    double fine = 1e-3;            // of each span, to which they are found
    double close = 5e-3;           // relative, to which a target is met
    std::size_t most_steps = 100;  // after the first looks
};

/// The rows of stoves at these points, in their order; all cores work on them.
using RowsAt = std::function<std::vector<Row>(const std::vector<Point>& points)>;

/// A point that was looked at.
struct FoundPoint {
    Point point;
    Row row;
};

struct SeveralFindings {
    std::optional<FoundPoint> found;
    std::optional<FoundPoint> nearest;  // where nothing holds: least far off
    std::vector<std::string> failures;  // of stoves that could not be computed
};

/// Looks at points spread evenly over the spans, then goes on from the best by linear models of
/// what is sought and what must hold (COBYLA of Powell 1994, by NLopt), twice. It can miss a place
/// that lies apart from where the first looks were good.
SeveralFindings find_several(const SeveralSearch& search, const RowsAt& rows_at);

}  // namespace drawwell

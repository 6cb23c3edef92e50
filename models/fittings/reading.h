#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "solver/heat_balance.h"

namespace drawwell {

/// What a fitting shows at each sample: one value of a column, SI.
struct Reading {
    std::string_view column;
    std::function<double(const HeatBalance& balance)> value;
};

/// What cannot be about a fitting as a file describes it.
struct FittingProblem {
    std::vector<std::string> keys;  // last words of the fitting's own that it is about
    std::string reason;
};

/// One thing a burn says of a fitting.
struct FittingAnswer {
    std::string_view key;         // `boils_after`
    std::string_view label;       // in the trade's words
    std::string_view unit;        // SI: s, K, kg, J; 1: a share
    std::optional<double> value;  // nothing: it never happened
    std::string fitting = {};     // `pot.kettle`
};

}  // namespace drawwell

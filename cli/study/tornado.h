#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/study/headline.h"
#include "cli/study/sensitivity.h"

namespace drawwell {

/// Influences on one answer as bars to both sides of what the stove has: inputs down the left,
/// the strongest first, one bar for less of each and one for more.
struct Tornado {
    struct Bar {
        std::string input;
        std::optional<double> less,
            more;  // what the answer becomes less what it is; none: no stove
    };
    std::string title, unit;
    int decimals = 0;
    std::vector<Bar> bars;
};

/// The strongest influences on an answer, at most so many.
Tornado tornado_of(const std::vector<Influence>& influences, const Row& base,
                   const Headline& headline, bool uncertain, std::size_t most);

/// Figures one below the other as one SVG, on white, with real text.
std::string tornado_svg(const std::string& title, const std::vector<Tornado>& figures);

}  // namespace drawwell

#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "cli/study/find_several.h"
#include "cli/study/run_rows.h"

namespace drawwell {

/// Stoves beside one that was found: each uncertain input one standard deviation less and more,
/// then each key a little less and more.
struct Beside {
    std::vector<std::string> inputs;
    std::vector<std::pair<double, double>> steps;  // [SI] of each key, to both sides
    std::vector<Variant> variants;
};

/// `text(k, value)` says a value of key k as --set would.
Beside stoves_beside(const Study& study, const Library& library, const SeveralSearch& search,
                     const Point& found, const std::vector<std::string>& keys,
                     const std::function<std::string(std::size_t k, double value)>& text);

/// How far the least (or largest) of the first key moves, or of one key what meets a target, with
/// each uncertain input, the strongest first, all keys then chosen anew: by the multipliers of the
/// conditions that hold it. As far as answers go straight on.
std::vector<std::pair<double, std::string>> shifts(const SeveralSearch& search,
                                                   const FoundPoint& found, const Beside& beside,
                                                   const std::vector<Row>& rows);

/// Multipliers, none negative, with which the gradients come nearest to the wanted one.
Point multipliers(const std::vector<Point>& gradients, const Point& wanted);

}  // namespace drawwell

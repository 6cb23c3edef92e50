#include "cli/study/shifts.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "models/uncertain_inputs.h"

namespace drawwell {
namespace {

constexpr double aside = 1.0 / 64;   // of a key's span
constexpr double holds_it = 0.03;    // [-] a condition no farther inside than this holds the place
constexpr double at_its_end = 2e-3;  // of the span: a key there can't move on
constexpr int rounds = 1000;         // of the descent, enough for a handful of conditions

std::optional<double> inside(const Condition& condition, const Row& row) {
    if (!row.done || !row.error.empty()) return {};
    const double by = relative_margin(condition, row.answers);
    return by > -1e6 ? std::optional(by) : std::nullopt;
}

}  // namespace

Beside stoves_beside(const Study& study, const Library& library, const SeveralSearch& search,
                     const Point& found, const std::vector<std::string>& keys,
                     const std::function<std::string(std::size_t k, double value)>& text) {
    Study at = study;
    at.variants = {Variant{}};
    for (std::size_t k = 0; k < keys.size(); ++k)
        at.sets.push_back({keys[k], text(k, found[k]), ""});
    Beside beside;
    for (const UncertainInput& input : uncertain_inputs(library, stove_of(at, 0, library))) {
        if (!(input.spread > 0)) continue;
        beside.inputs.push_back(input.name);
        for (const double deviations : {-1.0, 1.0})
            beside.variants.push_back({{}, {{input.name, deviations}}});
    }
    for (std::size_t k = 0; k < keys.size(); ++k) {
        const double step = aside * (search.high[k] - search.low[k]);
        const double low = std::max(search.low[k], found[k] - step),
                     high = std::min(search.high[k], found[k] + step);
        beside.steps.emplace_back(found[k] - low, high - found[k]);
        for (const double value : {low, high})
            beside.variants.push_back({{{keys[k], text(k, value), ""}}, {}});
    }
    return beside;
}

Point multipliers(const std::vector<Point>& gradients, const Point& wanted) {
    Point by(gradients.size(), 0), rest = wanted;
    for (int round = 0; round < rounds; ++round)
        for (std::size_t i = 0; i < gradients.size(); ++i) {
            double square = 0, along = 0;
            for (std::size_t k = 0; k < rest.size(); ++k) {
                square += gradients[i][k] * gradients[i][k];
                along += gradients[i][k] * rest[k];
            }
            if (!(square > 0)) continue;
            const double more = std::max(by[i] + along / square, 0.0) - by[i];
            by[i] += more;
            for (std::size_t k = 0; k < rest.size(); ++k) rest[k] -= more * gradients[i][k];
        }
    return by;
}

std::vector<std::pair<double, std::string>> shifts(const SeveralSearch& search,
                                                   const FoundPoint& found, const Beside& beside,
                                                   const std::vector<Row>& rows) {
    const std::size_t keys = search.low.size(), inputs = beside.inputs.size();
    const auto span = [&](std::size_t k) { return search.high[k] - search.low[k]; };
    const auto free = [&](std::size_t k) {
        const double margin = at_its_end * span(k);
        return k == 0 || (found.point[k] > search.low[k] + margin &&
                          found.point[k] < search.high[k] - margin);
    };
    std::vector<Point> gradients;
    // A target holds from both sides.
    std::vector<Condition> conditions = search.where;
    if (search.target)
        for (const auto side : {Condition::Relation::at_least, Condition::Relation::at_most})
            conditions.push_back({search.target->answer, side, search.target->value});
    std::vector<const Condition*> holding;
    for (const Condition& condition : conditions) {
        const auto here = inside(condition, found.row);
        if (!here || *here > holds_it) continue;
        Point gradient(keys, 0);
        for (std::size_t k = 0; k < keys; ++k) {
            const auto less = inside(condition, rows[2 * inputs + 2 * k]),
                       more = inside(condition, rows[2 * inputs + 2 * k + 1]);
            const double width =
                (less ? beside.steps[k].first : 0) + (more ? beside.steps[k].second : 0);
            if (free(k) && width > 0)
                gradient[k] = (more.value_or(*here) - less.value_or(*here)) / width * span(k);
        }
        gradients.push_back(std::move(gradient));
        holding.push_back(&condition);
    }
    const double sign = search.goal == SeveralSearch::Goal::largest ? -1 : 1;
    Point wanted(keys, 0);
    wanted[0] = sign;
    const Point by = multipliers(gradients, wanted);
    std::vector<std::pair<double, std::string>> all;
    for (std::size_t u = 0; u < inputs; ++u) {
        double shift = 0;
        bool known = true;
        for (std::size_t i = 0; i < holding.size(); ++i) {
            if (!(by[i] > 0)) continue;
            const auto less = inside(*holding[i], rows[2 * u]),
                       more = inside(*holding[i], rows[2 * u + 1]);
            known = known && less && more;
            if (known) shift -= sign * by[i] * (*more - *less) / 2 * span(0);
        }
        if (known && std::abs(shift) > 0) all.emplace_back(shift, beside.inputs[u]);
    }
    std::sort(all.begin(), all.end(),
              [](const auto& a, const auto& b) { return std::abs(a.first) > std::abs(b.first); });
    return all;
}

}  // namespace drawwell

#include "cli/study/sensitivity.h"

#include <algorithm>
#include <cmath>

#include "cli/read/keys.h"
#include "cli/read/units.h"
#include "models/uncertain_inputs.h"

namespace drawwell {
namespace {

constexpr double tenth = 0.1;

bool sound(const Row& row) {
    return row.done && row.error.empty();
}

/// Names and values of the stove's dimensions.
std::vector<std::pair<std::string, double>> dimensions_of(const Stove& stove) {
    std::vector<std::pair<std::string, double>> all;
    StoveDraft draft = draft_of(stove);
    for (const FoundKey& found : keys_in(draft)) {
        const bool measured =
            found.key->kind == Kind::quantity &&
            (found.key->quantity == Quantity::length || found.key->quantity == Quantity::area);
        if (!measured) continue;
        const std::optional<Value> value = get_value(draft, found);
        const double* number = value ? std::get_if<double>(&*value) : nullptr;
        if (number && *number > 0) all.emplace_back(full_key_name(*found.key, found.name), *number);
    }
    return all;
}

Variant with(const std::string& key, double value) {
    return {{{key, show_quantity(value, find_key(key).key->quantity, 12), ""}}};
}

}  // namespace

std::vector<Influence> influences_on(const Study& study, const Library& library,
                                     const Compute& compute) {
    Study both = study;
    both.variants = {Variant{}};
    const Stove stove = stove_of(both, 0, library);
    both.variants.clear();
    std::vector<Influence> all;
    for (const auto& [key, value] : dimensions_of(stove)) {
        all.push_back({key, false, {}, {}});
        both.variants.push_back(with(key, value * (1 - tenth)));
        both.variants.push_back(with(key, value * (1 + tenth)));
    }
    for (const UncertainInput& input : uncertain_inputs(library, stove)) {
        if (!(input.spread > 0)) continue;
        all.push_back({input.name, true, {}, {}});
        for (const double deviations : {-1.0, 1.0})
            both.variants.push_back({{}, {{input.name, deviations}}});
    }
    std::vector<Row> rows = compute(both);
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i].less = std::move(rows[2 * i]);
        all[i].more = std::move(rows[2 * i + 1]);
    }
    return all;
}

std::optional<double> change(const Influence& influence, const Row& base, std::string_view answer) {
    const auto value = [&](const Row& row) {
        return sound(row) ? row.answers.number(answer) : std::nullopt;
    };
    const auto less = value(influence.less), more = value(influence.more), here = value(base);
    if (less && more) return (*more - *less) / 2;
    if (more && here) return *more - *here;
    if (less && here) return *here - *less;
    return {};
}

std::vector<const Influence*> ranked(const std::vector<Influence>& influences, const Row& base,
                                     std::string_view answer) {
    std::vector<const Influence*> order;
    for (const Influence& influence : influences)
        if (std::abs(change(influence, base, answer).value_or(0)) > 0) order.push_back(&influence);
    std::stable_sort(order.begin(), order.end(), [&](const Influence* a, const Influence* b) {
        return std::abs(*change(*a, base, answer)) > std::abs(*change(*b, base, answer));
    });
    return order;
}

}  // namespace drawwell

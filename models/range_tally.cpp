#include "models/range_tally.h"

#include <algorithm>
#include <cmath>

namespace drawwell {
namespace {

constexpr std::array<std::string_view, answer_count> answer_names = {"draw", "plate", "exit gas",
                                                                     "what wears out"};

constexpr double far_outside = 1e3;  // [-] times too low or too high: further makes no difference

/// Logarithm of how many times too low or too high.
double distance_outside(const Range& range, double value) {
    const double times = value > range.high ? value / range.high
                         : value > 0        ? range.low / value
                                            : far_outside;
    return std::log(std::min(times, far_outside));
}

}  // namespace

Effect effect_of(double weight) {
    if (weight < small_from) return Effect::nothing;
    return weight < care_from ? Effect::small : Effect::judge_with_care;
}

RangeTally::Entry& RangeTally::entry(const Range& range, std::string_view where) {
    const auto found = std::find_if(entries_.begin(), entries_.end(), [&](const Entry& e) {
        return e.range == &range && e.where == where;
    });
    if (found != entries_.end()) return *found;
    entries_.emplace_back();
    entries_.back().range = &range;
    entries_.back().where = where;
    return entries_.back();
}

void RangeTally::use(const Range& range, double value, Answer on, double amount,
                     std::string_view where) {
    if (range.holds(value) || !(amount > 0)) return;
    Entry& at = entry(range, where);
    at.now.outside = true;
    at.now.amount[index(on)] += amount;
    const double strain = distance_outside(range, value) * amount;
    if (strain > at.strain) {
        at.strain = strain;
        at.worst = value;
    }
}

void RangeTally::advance(double time) {
    if (!begun_) first_time_ = last_time_ = time;
    begun_ = true;
    const double half = (time - last_time_) / 2;
    for (Entry& at : entries_) {
        for (const Instant* instant : {&at.last, &at.now}) {
            if (instant->outside) at.time += half;
            for (std::size_t a = 0; a < answer_count; ++a)
                at.amount[a] += half * instant->amount[a];
        }
        at.last = at.now;
        at.now = {};
    }
    for (std::size_t a = 0; a < answer_count; ++a)
        carried_[a] += half * (last_carried_[a] + now_carried_[a]);
    last_carried_ = now_carried_;
    now_carried_ = {};
    last_time_ = time;
}

std::vector<Stretched> RangeTally::stretched(const ByAnswer& besides) const {
    std::vector<Stretched> all;
    for (const Entry& at : entries_) {
        if (!(at.time > 0)) continue;
        std::size_t most = 0;
        ByAnswer weight{};
        for (std::size_t a = 0; a < answer_count; ++a) {
            const double carried = carried_[a] + besides[a];
            if (carried > 0) weight[a] = at.range->uncertainty * at.amount[a] / carried;
            if (weight[a] > weight[most]) most = a;
        }
        all.push_back({.law = std::string(at.range->law),
                       .where = at.where,
                       .what = std::string(at.range->quantity),
                       .unit = std::string(at.range->unit),
                       .low = at.range->low,
                       .high = at.range->high,
                       .worst = at.worst,
                       .share_of_burn = at.time / (last_time_ - first_time_),
                       .weight = weight[most],
                       .effect = effect_of(weight[most]),
                       .on = std::string(weight[most] > 0 ? answer_names[most] : "")});
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Stretched& a, const Stretched& b) { return a.weight > b.weight; });
    return all;
}

}  // namespace drawwell

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/study/answers.h"

namespace drawwell {

/// What an answer must be: `reserve_draw_min_pa >= 3`, `smoke_back_s = 0`.
struct Condition {
    enum class Relation { at_least, at_most, equal };
    std::string answer;
    Relation relation = Relation::at_least;
    double value = 0;
};

/// Reads one; `draws` alone is `draws >= 1`. InputError: no relation, no number, no such answer.
Condition parse_condition(std::string_view text);

/// How far inside the condition an answer is, in its own unit; negative: outside. An answer that
/// never happened is as far outside as can be.
double margin(const Condition& condition, const Answers& answers);

/// The same as a share of the condition's value; of 1 where that is 0.
double relative_margin(const Condition& condition, const Answers& answers);

/// Whether all hold.
bool all_hold(const std::vector<Condition>& conditions, const Answers& answers);

/// In words, which of these a burn gave no answer to, and why it did not; empty: it answered all.
std::string unanswered(const std::vector<std::string>& asked, const Answers& answers);

}  // namespace drawwell

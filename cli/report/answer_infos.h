#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace drawwell {

/// What an answer of a burn means, by the name that JSON, conditions and tables know it by.
struct AnswerInfo {
    std::string name;     // `plate_centre_max_c`; of a fitting `pot.NAME/boils_after_s`
    std::string unit;     // `°C`; empty: a plain number; `yes/no` or `word`: no number
    std::string meaning;  // in the trade's words
};

/// Every answer of a burn, in the order of `summary_entries`.
std::span<const AnswerInfo> burn_answers();

/// Every answer of every kind of fitting, each of any NAME.
std::vector<AnswerInfo> fitting_answer_infos();

}  // namespace drawwell

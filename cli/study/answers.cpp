#include "cli/study/answers.h"

#include <algorithm>
#include <type_traits>

#include "cli/report/fitting_text.h"
#include "cli/report/summary_entries.h"

namespace drawwell {
namespace {

Answer answer_of(const SummaryEntry& entry) {
    return std::visit(
        [](const auto& value) -> Answer {
            using T = std::decay_t<decltype(value)>;
            if constexpr (std::is_same_v<T, std::string_view>)
                return std::string(value);
            else if constexpr (std::is_same_v<T, std::size_t>)
                return static_cast<double>(value);
            else
                return value;
        },
        entry.value);
}

}  // namespace

Answers::Answers(const Summary& summary) {
    for (const SummaryEntry& entry : summary_entries(summary))
        if (entry.key != "wall_clock_s") all_.emplace_back(entry.key, answer_of(entry));
    for (const FittingAnswer& answer : summary.fittings) {
        const auto [key, value] = fitting_figure(answer);
        all_.emplace_back(answer.fitting + "/" + key, answer.value ? Answer(value) : Answer());
    }
}

const Answer* Answers::find(std::string_view name) const {
    const auto found = std::find_if(all_.begin(), all_.end(),
                                    [&](const auto& each) { return each.first == name; });
    return found == all_.end() ? nullptr : &found->second;
}

std::optional<double> Answers::number(std::string_view name) const {
    const Answer* answer = find(name);
    if (!answer) return {};
    if (const double* value = std::get_if<double>(answer)) return *value;
    if (const bool* holds = std::get_if<bool>(answer)) return *holds ? 1.0 : 0.0;
    return {};
}

}  // namespace drawwell

#include "cli/study/condition.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "cli/read/units.h"
#include "cli/study/known_answers.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double exactly = 1e-9;  // within which two figures are equal

std::string trimmed(std::string_view text) {
    const std::size_t from = text.find_first_not_of(' '), to = text.find_last_not_of(' ');
    return from == std::string_view::npos ? "" : std::string(text.substr(from, to - from + 1));
}

}  // namespace

Condition parse_condition(std::string_view text) {
    using enum Condition::Relation;
    constexpr std::pair<std::string_view, Condition::Relation> relations[] = {
        {">=", at_least}, {"≥", at_least}, {"<=", at_most},
        {"≤", at_most},   {"==", equal},   {"=", equal}};
    for (const auto& [sign, relation] : relations) {
        const std::size_t at = text.find(sign);
        if (at == std::string_view::npos) continue;
        Condition condition{trimmed(text.substr(0, at)), relation, 0};
        check_answer(condition.answer, true);
        try {
            condition.value = parse_quantity(text.substr(at + sign.size()), Quantity::number);
        } catch (const InputError& error) {
            throw InputError(fmt::format("{}: {}", text, error.what()));
        }
        return condition;
    }
    const std::string name = trimmed(text);
    if (name == "draws") return {name, at_least, 1};
    throw InputError(fmt::format(
        "{}: write ANSWER >= NUMBER, <= or =, for example reserve_draw_min_pa >= 3", text));
}

double margin(const Condition& condition, const Answers& answers) {
    const std::optional<double> value = answers.number(condition.answer);
    if (!value) return -std::numeric_limits<double>::max();
    switch (condition.relation) {
        case Condition::Relation::at_least:
            return *value - condition.value;
        case Condition::Relation::at_most:
            return condition.value - *value;
        case Condition::Relation::equal:
            break;
    }
    return exactly - std::abs(*value - condition.value);
}

double relative_margin(const Condition& condition, const Answers& answers) {
    const double by = margin(condition, answers), scale = std::abs(condition.value);
    return scale > 0 && by > -std::numeric_limits<double>::max() ? by / scale : by;
}

bool all_hold(const std::vector<Condition>& conditions, const Answers& answers) {
    return std::all_of(conditions.begin(), conditions.end(),
                       [&](const Condition& condition) { return margin(condition, answers) >= 0; });
}

std::string unanswered(const std::vector<std::string>& asked, const Answers& answers) {
    std::vector<std::string> names;
    for (const std::string& name : asked)
        if (!answers.number(name) && std::find(names.begin(), names.end(), name) == names.end())
            names.push_back(name);
    if (names.empty()) return "";
    return fmt::format("No answer to {}: {}.", fmt::join(names, ", "),
                       answers.number("draws")
                           ? "it never happened, or the stove has no such part"
                           : "the burn is too short to judge the draw, or it never happened");
}

}  // namespace drawwell

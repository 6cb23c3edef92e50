#include "cli/commands/find_page.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/study/headline.h"
#include "cli/study/input_words.h"
#include "cli/study/likely.h"

namespace drawwell {
namespace {

constexpr std::size_t told_inputs = 3;

}  // namespace

void tell_answers(const Row& row, UnitSystem units, Page& page) {
    for (const Headline& each : headlines()) {
        const Headline headline = in_system(each, units);
        page.row(headline.heading, shown(row.answers, headline) +
                                       (headline.unit.empty() ? "" : " ") +
                                       std::string(headline.unit));
    }
}

void tell_unanswered(const std::vector<Condition>& where, const std::optional<Condition>& target,
                     const Row& row, Page& page) {
    std::vector<std::string> asked;
    for (const Condition& condition : where) asked.push_back(condition.answer);
    if (target) asked.push_back(target->answer);
    const std::string text = unanswered(asked, row.answers);
    if (!text.empty()) page.paragraph(text + " A condition on it counts as not fulfilled.");
}

void tell_shifts(const std::string& what,
                 const std::vector<std::pair<std::string, std::string>>& shifts, Page& page) {
    if (shifts.empty()) return;
    page.heading("How sure that is");
    page.paragraph(
        what +
        " moves with what is least certain, a usual spread of each (one standard deviation), as "
        "far as the answer goes straight on:");
    for (std::size_t i = 0; i < std::min(told_inputs, shifts.size()); ++i)
        page.row(shifts[i].second,
                 fmt::format("{} ({})", input_in_words(shifts[i].first), shifts[i].first));
}

void tell_days(std::vector<Override> settings, const Study& study, const FindOptions& options,
               const Compute& compute, Page& page) {
    if (options.days == 0) return;
    Study likely = study;
    likely.sets.insert(likely.sets.end(), settings.begin(), settings.end());
    likely.variants = {Variant{}};
    likely.days = options.days;
    likely.seed = options.seed;
    tell_likely(compute(likely), page, options.units);
}

void tell_failures(const std::vector<std::string>& failures, Page& page) {
    if (failures.empty()) return;
    page.heading("Stoves that could not be");
    page.paragraph(fmt::format("{} of those looked at; the first reason:", failures.size()));
    page.problems(*std::min_element(failures.begin(), failures.end()));
}

}  // namespace drawwell

#include "cli/commands/find_command.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <iostream>
#include <memory>
#include <set>

#include "cli/commands/study_options.h"
#include "cli/commands/units_option.h"
#include "cli/commands/watched_run.h"
#include "cli/read/keys.h"
#include "cli/read/read_library.h"
#include "cli/read/suggest_key.h"
#include "cli/read/units.h"
#include "cli/report/page_text.h"
#include "cli/report/page_writer.h"
#include "cli/study/find_value.h"
#include "cli/study/headline.h"
#include "cli/study/input_words.h"
#include "cli/study/sensitivity.h"
#include "models/uncertain_inputs.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr std::size_t told_inputs = 3;  // uncertain ones, of those that move the answer most

struct FindOptions {
    std::string file, smallest, largest, target, by, between;
    std::vector<std::string> where;
    StudyOptions study;
    UnitSystem units = UnitSystem::metric;
};

/// What is sought, and in which key.
struct Quest {
    Search search;
    std::string key;
    const Key* found = nullptr;
    UnitSystem units = UnitSystem::metric;

    std::string text(double value) const { return show_quantity(value, found->quantity, 12); }
    std::string shown(double value) const { return show_setting(value, found->quantity, units); }
    std::string shift(double by) const { return show_shift(by, found->quantity, units); }
};

void set_span(const FindOptions& options, const Stove& stove, Quest& quest) {
    const std::size_t colon = options.between.find(':');
    if (!options.between.empty()) {
        if (colon == std::string::npos)
            throw InputError("--between " + options.between + ": write FROM:TO");
        quest.search.low = parse_quantity(options.between.substr(0, colon), quest.found->quantity);
        quest.search.high =
            parse_quantity(options.between.substr(colon + 1), quest.found->quantity);
    } else {
        const std::optional<Value> value = get_value(stove, quest.key);
        const double* here = value ? std::get_if<double>(&*value) : nullptr;
        if (!here || !(*here > 0))
            throw InputError(quest.key + " has no figure to begin from: say --between FROM:TO");
        quest.search.low = std::max(*here / 2, quest.found->least);
        quest.search.high = std::min(*here * 2, quest.found->most);
    }
    if (!(quest.search.low < quest.search.high))
        throw InputError("--between goes from the lower to the higher end");
}

Quest quest_of(const FindOptions& options) {
    Quest quest;
    const int goals = (options.smallest.empty() ? 0 : 1) + (options.largest.empty() ? 0 : 1) +
                      (options.target.empty() ? 0 : 1);
    if (goals != 1) throw InputError("say one of --smallest, --largest and --target");
    if (!options.target.empty()) {
        quest.search.goal = Search::Goal::target;
        quest.search.target = parse_condition(options.target);
        if (quest.search.target->relation != Condition::Relation::equal)
            throw InputError("--target " + options.target + ": write ANSWER=NUMBER");
        if (options.by.empty()) throw InputError("--target needs --by KEY: what may be changed");
        quest.key = options.by;
    } else {
        const bool smallest = !options.smallest.empty();
        quest.search.goal = smallest ? Search::Goal::smallest : Search::Goal::largest;
        quest.key = smallest ? options.smallest : options.largest;
        if (options.where.empty())
            throw InputError("say what must hold: --where 'reserve_draw_min_pa >= 3'");
    }
    for (const std::string& text : options.where)
        quest.search.where.push_back(parse_condition(text));
    quest.found = &known_key(quest.key, quest.key);
    quest.units = options.units;
    if (quest.found->kind != Kind::quantity)
        throw InputError(quest.key + " is no figure that could be sought");
    return quest;
}

/// Answer on which the found value hangs: the target's, or that of the condition nearest to its
/// limit.
std::string binding_answer(const Quest& quest, const Row& row) {
    if (quest.search.target) return quest.search.target->answer;
    const Condition* binding = nullptr;
    double least = 0;
    for (const Condition& condition : quest.search.where) {
        const double scale = std::max(std::abs(condition.value), 1.0);
        const double inside = margin(condition, row.answers) / scale;
        if (condition.answer == "draws" || (binding && inside >= least)) continue;
        binding = &condition;
        least = inside;
    }
    return binding ? binding->answer : "";
}

/// Tells how far the value moves with the most uncertain inputs, one standard deviation each.
void tell_shifts(const Quest& quest, const Found& found, const Study& study, const Library& library,
                 const Compute& compute, Page& page) {
    const std::string answer = binding_answer(quest, found.row);
    if (answer.empty()) return;
    Study at = study;
    at.sets.push_back({quest.key, quest.text(found.value), ""});
    at.variants = {Variant{}};
    const Stove stove = stove_of(at, 0, library);
    at.variants.clear();
    std::vector<std::string> names;
    for (const UncertainInput& input : uncertain_inputs(library, stove)) {
        if (!(input.spread > 0)) continue;
        names.push_back(input.name);
        for (const double deviations : {-1.0, 1.0})
            at.variants.push_back({{}, {{input.name, deviations}}});
    }
    const double aside = (quest.search.high - quest.search.low) / 64;
    for (const double value : {found.value - aside, found.value + aside})
        at.variants.push_back({{{quest.key, quest.text(value), ""}}, {}});
    const std::vector<Row> rows = compute(at);
    const auto number = [&](std::size_t i) {
        return rows[i].error.empty() ? rows[i].answers.number(answer) : std::nullopt;
    };
    const std::size_t last = rows.size();
    const auto below = number(last - 2), above = number(last - 1),
               here = found.row.answers.number(answer);
    if (!here || (!below && !above)) return;
    const double slope = (above.value_or(*here) - below.value_or(*here)) /
                         ((above ? aside : 0) + (below ? aside : 0));
    if (!(std::abs(slope) > 0)) return;
    std::vector<std::pair<double, std::string>> shifts;
    for (std::size_t k = 0; k < names.size(); ++k) {
        const auto less = number(2 * k), more = number(2 * k + 1);
        if (less && more) shifts.emplace_back(-(*more - *less) / 2 / slope, names[k]);
    }
    std::sort(shifts.begin(), shifts.end(),
              [](const auto& a, const auto& b) { return std::abs(a.first) > std::abs(b.first); });
    page.heading("How sure that is");
    page.paragraph(
        "It moves with what is least certain, a usual spread of each (one standard deviation), "
        "as far as the answer goes straight on:");
    for (std::size_t i = 0; i < std::min(told_inputs, shifts.size()); ++i)
        page.row(quest.shift(shifts[i].first),
                 fmt::format("{} ({})", input_in_words(shifts[i].second), shifts[i].second));
}

void tell_answers(const Quest& quest, const Row& row, Page& page) {
    for (const Headline& each : headlines()) {
        const Headline headline = in_system(each, quest.units);
        page.row(headline.heading, shown(row.answers, headline) +
                                       (headline.unit.empty() ? "" : " ") +
                                       std::string(headline.unit));
    }
}

void tell_findings(const Quest& quest, const Findings& findings, Page& page) {
    page.verdict(fmt::format("{} = {}{}", quest.key, quest.shown(findings.found.front().value),
                             findings.found.front().at_end
                                 ? ", the end of what was looked at: it may go on beyond"
                                 : ""),
                 true);
    page.row("that is", input_in_words(quest.key));
    tell_answers(quest, findings.found.front().row, page);
    for (std::size_t i = 1; i < findings.found.size(); ++i)
        page.paragraph(fmt::format("There is another: {}.", quest.shown(findings.found[i].value)));
    if (findings.holds_within.size() > 1) {
        page.heading("What was asked for holds in several stretches");
        for (const auto& [from, to] : findings.holds_within)
            page.point(fmt::format("{} to {}", quest.shown(from), quest.shown(to)));
    }
}

void tell_nothing(const Quest& quest, const Findings& findings, Page& page) {
    page.verdict(fmt::format("Nowhere from {} to {}.", quest.shown(quest.search.low),
                             quest.shown(quest.search.high)),
                 false);
    if (findings.nearest) {
        page.paragraph(fmt::format("Least far off is {} = {}:", quest.key,
                                   quest.shown(findings.nearest->value)));
        tell_answers(quest, findings.nearest->row, page);
    }
}

void tell_failures(const Findings& findings, Page& page) {
    const std::set<std::string> reasons(findings.failures.begin(), findings.failures.end());
    if (reasons.empty()) return;
    page.heading("Stoves that could not be");
    page.paragraph(fmt::format("{} of those looked at; the first reason: {}",
                               findings.failures.size(), *reasons.begin()));
}

void find(const FindOptions& options) {
    Quest quest = quest_of(options);
    Study study = begin_study({options.file}, options.study);
    const Library library = read_library();
    study.variants = {Variant{}};
    set_span(options, stove_of(study, 0, library), quest);

    Journal none;
    const Compute compute = [&](const Study& asked) {
        return compute_rows(asked, library, none, options.study);
    };
    const Findings findings = find_value(quest.search, [&](std::span<const double> values) {
        Study at = study;
        at.variants.clear();
        for (const double value : values)
            at.variants.push_back({{{quest.key, quest.text(value), ""}}, {}});
        return compute(at);
    });
    Page page(terminal_with_colour());
    if (findings.found.empty()) {
        tell_nothing(quest, findings, page);
    } else {
        tell_findings(quest, findings, page);
        if (!findings.found.front().at_end)
            tell_shifts(quest, findings.found.front(), study, library, compute, page);
    }
    tell_failures(findings, page);
    std::cout << page.text();
}

}  // namespace

void add_find_command(CLI::App& app) {
    const auto options = std::make_shared<FindOptions>();
    CLI::App* command =
        app.add_subcommand("find",
                           "Find the dimension that does it: the shortest riser that still "
                           "draws, the barrel for the plate you want");
    command->add_option("STOVE", options->file, "stove file; - reads standard input")->required();
    command->add_option("--smallest", options->smallest, "the smallest of this for which all hold")
        ->type_name("KEY");
    command->add_option("--largest", options->largest, "the largest")->type_name("KEY");
    command
        ->add_option("--where", options->where,
                     "what must hold, e.g. 'reserve_draw_min_pa >= 3'; may be repeated")
        ->allow_extra_args(false)
        ->type_name("CONDITION");
    command->add_option("--target", options->target, "an answer to be met: plate_minutes_fry=40")
        ->type_name("ANSWER=NUMBER");
    command->add_option("--by", options->by, "the key that may change to meet it")
        ->type_name("KEY");
    command
        ->add_option("--between", options->between,
                     "where to look; default: half to twice what the file says")
        ->type_name("FROM:TO");
    add_study_options(*command, options->study);
    add_units_option(*command, options->units);
    command->footer(
        "Examples:\n"
        "  drawwell find kitchen.toml --smallest riser.top \\\n"
        "      --where 'reserve_draw_min_pa >= 3' --where 'smoke_back_s = 0' \\\n"
        "      --follow 'plate.underside = riser.top + 45mm'\n"
        "  drawwell find kitchen.toml --target plate_minutes_fry=40 --by barrel.height\n");
    command->callback([options] { find(*options); });
}

}  // namespace drawwell

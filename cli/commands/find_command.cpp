#include "cli/commands/find_command.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "cli/commands/find_page.h"
#include "cli/commands/find_quest.h"
#include "cli/commands/find_together.h"
#include "cli/commands/units_option.h"
#include "cli/commands/watched_run.h"
#include "cli/read/read_library.h"
#include "cli/report/page_writer.h"
#include "cli/study/find_value.h"
#include "cli/study/input_words.h"
#include "cli/study/known_answers.h"
#include "cli/study/shifts.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

/// Tells how far the value moves with the most uncertain inputs, one standard deviation each.
void tell_shifts_of(const Quest& quest, const Found& found, const Study& study,
                    const Library& library, const Compute& compute, Page& page) {
    SeveralSearch search;
    search.low = {quest.search.low};
    search.high = {quest.search.high};
    search.where = quest.search.where;
    search.target = quest.search.target;
    search.goal = several_goal(quest.search.goal);
    const Beside beside =
        stoves_beside(study, library, search, {found.value}, {quest.key},
                      [&](std::size_t, double value) { return quest.text(value); });
    Study at = study;
    at.sets.push_back({quest.key, quest.text(found.value), ""});
    at.variants = beside.variants;
    std::vector<std::pair<std::string, std::string>> told;
    for (const auto& [by, name] : shifts(search, {{found.value}, found.row}, beside, compute(at)))
        told.emplace_back(name, quest.shift(by));
    tell_shifts("It", told, page);
}

void tell_findings(const Quest& quest, const Findings& findings, Page& page) {
    page.verdict(fmt::format("{} = {}{}", quest.key, quest.shown(findings.found.front().value),
                             findings.found.front().at_end
                                 ? ", the end of what was looked at: it may go on beyond"
                                 : ""),
                 true);
    page.row("that is", input_in_words(quest.key));
    tell_answers(findings.found.front().row, quest.units, page);
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
        tell_answers(findings.nearest->row, quest.units, page);
        tell_unanswered(quest.search.where, quest.search.target, findings.nearest->row, page);
    }
}

void find(const FindOptions& options) {
    Quest quest = quest_of(options);
    Study study = begin_study({options.file}, options.study);
    const Library library = read_library();
    study.variants = {Variant{}};
    set_span(options, stove_of(study, 0, library), quest);
    check_follows(study.follows, {quest.key});
    check_follows_of(study, library);
    std::vector<std::string> answers;
    for (const Condition& condition : quest.search.where) answers.push_back(condition.answer);
    if (quest.search.target) answers.push_back(quest.search.target->answer);
    check_answers(answers, study, library);

    Journal none;
    const Compute compute = [&](const Study& asked) {
        return compute_rows(asked, library, none, options.study);
    };
    if (!options.study.varies.empty())
        return find_together(quest, options, study, library, compute);
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
            tell_shifts_of(quest, findings.found.front(), study, library, compute, page);
        tell_days({{quest.key, quest.text(findings.found.front().value), ""}}, study, options,
                  compute, page);
    }
    tell_failures(findings.failures, page);
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
    command
        ->add_option("--vary", options->study.varies,
                     "a further key that may change within a span, flue.stack.length=1m:3m; may be "
                     "repeated. To meet a target they then change as little as can be")
        ->allow_extra_args(false)
        ->type_name("KEY=FROM:TO");
    command
        ->add_option(
            "--likely", options->days,
            "burn what was found on so many days and fires, on which all that is uncertain "
            "is otherwise")
        ->type_name("N");
    command->add_option("--seed", options->seed, "of the days; default 1")->type_name("N");
    add_study_options(*command, options->study);
    add_units_option(*command, options->units);
    command->footer(
        "Examples:\n"
        "  drawwell find kitchen.toml --smallest riser.top --between 650mm:900mm \\\n"
        "      --where 'reserve_draw_min_pa >= 7' --where 'smoke_back_s = 0' \\\n"
        "      --follow 'plate.underside = riser.top + 45mm'\n"
        "  drawwell find kitchen.toml --target air_ratio_mean=5 --by port.width \\\n"
        "      --between 50mm:110mm\n"
        "  drawwell find kitchen.toml --smallest flue.stack.length --between 0.6m:2.5m \\\n"
        "      --vary barrel.height=300mm:620mm --where 'reserve_draw_min_pa >= 6'\n");
    command->callback([options] { find(*options); });
}

}  // namespace drawwell

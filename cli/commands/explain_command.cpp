#include "cli/commands/explain_command.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <cmath>
#include <iostream>
#include <memory>

#include "cli/commands/stove_request.h"
#include "cli/commands/study_options.h"
#include "cli/commands/targets.h"
#include "cli/commands/units_option.h"
#include "cli/commands/watched_run.h"
#include "cli/read/read_library.h"
#include "cli/read/several_problems.h"
#include "cli/report/page_text.h"
#include "cli/report/page_writer.h"
#include "cli/report/pending_file.h"
#include "cli/study/condition.h"
#include "cli/study/cure.h"
#include "cli/study/input_words.h"
#include "cli/study/known_answers.h"
#include "cli/study/sensitivity.h"
#include "cli/study/tornado.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr std::size_t longest_bar = 24;  // characters

struct ExplainOptions {
    std::string file, symptom, output;
    std::vector<std::string> answers;
    std::size_t rows = 8;
    StudyOptions study;
    UnitSystem units = UnitSystem::metric;
};

/// A bar whose length is a share of the longest.
std::string bar(double share) {
    const auto length =
        static_cast<std::size_t>(std::lround(std::abs(share) * static_cast<double>(longest_bar)));
    std::string text;
    for (std::size_t i = 0; i < std::max<std::size_t>(length, 1); ++i) text += "█";
    return text;
}

std::string signed_number(double value, int decimals) {
    const std::string text = show_number(value, decimals);
    return text.front() == '-' ? text : "+" + text;
}

void tell_ranking(const std::vector<Influence>& influences, const Row& base,
                  const Headline& headline, bool uncertain, std::size_t most, Page& page,
                  std::vector<std::string>& told) {
    std::vector<const Influence*> order = ranked(influences, base, headline.answer);
    std::erase_if(order, [&](const Influence* each) { return each->uncertain != uncertain; });
    if (order.size() > most) order.resize(most);
    if (order.empty()) return;
    page.heading(fmt::format(
        "{}: {}", headline.heading,
        uncertain ? "what is uncertain, its usual spread more" : "dimensions, a tenth more"));
    const double largest = std::abs(*change(*order.front(), base, headline.answer));
    for (const Influence* each : order) {
        const double by = *change(*each, base, headline.answer);
        page.line(fmt::format("  {:<30} {:>8} {:<3} {}", each->input,
                              signed_number(headline.scale * by, headline.decimals + 1),
                              headline.unit, bar(by / largest)));
        if (std::find(told.begin(), told.end(), each->input) == told.end())
            told.push_back(each->input);
    }
}

/// The same ranking as a figure.
void draw_ranking(const ExplainOptions& options, const std::vector<Influence>& influences,
                  const Row& base, const std::vector<Headline>& answers) {
    std::vector<Tornado> figures;
    for (const Headline& headline : answers)
        for (const bool uncertain : {false, true})
            figures.push_back(tornado_of(influences, base, headline, uncertain, options.rows));
    const std::filesystem::path name = std::filesystem::path(options.file).stem();
    write_whole(options.output,
                tornado_svg(options.file == "-" ? "What moves the answers"
                                                : "What moves the answers: " + name.string(),
                            figures));
}

void explain(const ExplainOptions& options, const Study& study, const Library& library,
             const Compute& compute) {
    if (!options.output.empty())
        check_outputs(std::array{Output{"-o", options.output, FileKind::figure}},
                      inputs_of(options.file, study.files.front(), study.sets),
                      options.study.force);
    std::vector<Headline> answers;
    for (const std::string& name : options.answers) {
        check_answer(name, true);
        answers.push_back(in_system(headline_of(name), options.units));
    }
    if (answers.empty())
        for (const Headline& headline : headlines())
            if (headline.answer != "draws" && headline.answer != "smoke_back_s")
                answers.push_back(in_system(headline, options.units));
    Study alone = study;
    alone.variants = {Variant{}};
    check_answers(options.answers, alone, library);
    check_follows_of(alone, library);
    const Row base = compute(alone).front();
    if (!base.error.empty()) throw SeveralProblems(base.error);
    const std::vector<Influence> influences = influences_on(study, library, compute);
    Page page(terminal_with_colour());
    page.paragraph(
        "How much each answer changes, others as they are. Half the difference between "
        "more and less; where one of the two can't be built, the whole of the other. The usual "
        "spread of what is uncertain is one standard deviation: two days of three lie within.");
    std::vector<std::string> told;
    for (const Headline& headline : answers) {
        tell_ranking(influences, base, headline, false, options.rows, page, told);
        tell_ranking(influences, base, headline, true, options.rows, page, told);
    }
    std::vector<std::string> asked;
    for (const Headline& headline : answers) asked.emplace_back(headline.answer);
    const std::string without = unanswered(asked, base.answers);
    if (!without.empty()) page.paragraph(without);
    if (!told.empty()) page.heading("What they are");
    for (const std::string& input : told) page.point(input + ": " + input_in_words(input));
    std::cout << page.text();
    if (!options.output.empty()) draw_ranking(options, influences, base, answers);
}

/// The condition under which a symptom is gone: smoke_back_s = 0; any condition may be said.
Condition cured_when(const std::string& symptom) {
    if (symptom == "smoke_back_s" || symptom == "flue_wet_s")
        return {symptom, Condition::Relation::at_most, 0};
    if (symptom.find_first_of("<>=") == std::string::npos && symptom != "draws")
        throw InputError("--cure " + symptom +
                         ": say when it is cured, for example 'reserve_draw_min_pa >= 3'");
    return parse_condition(symptom);
}

void cure(const ExplainOptions& options, const Study& study, const Library& library,
          const Compute& compute) {
    const Condition cured = cured_when(options.symptom);
    Study tried = study;
    tried.variants = {Variant{}};
    check_answers({cured.answer}, tried, library);
    check_follows_of(tried, library);
    const Stove stove = stove_of(tried, 0, library);
    const std::vector<Remedy> remedies = remedies_for(stove);
    for (const Remedy& remedy : remedies) tried.variants.push_back(remedy.variant);
    const std::vector<Row> rows = compute(tried);
    const Headline headline = in_system(headline_of(cured.answer), options.units);
    Page page(terminal_with_colour());
    const auto tell = [&](const std::string& what, const Row& row) {
        const bool sound = row.error.empty();
        const bool ends = sound && margin(cured, row.answers) >= 0;
        page.line(fmt::format("  {:<52} {:>9} {:<3}{}", what,
                              sound ? shown(row.answers, headline) : "can't be",
                              sound ? headline.unit : "", ends ? " ends it" : ""));
    };
    page.heading("Single changes, the cheapest first");
    page.line(fmt::format("  {:<52} {:>9}", "", headline.heading));
    tell("as filed", rows[0]);
    if (rows[0].error.empty() && margin(cured, rows[0].answers) >= 0)
        page.paragraph("The stove as filed does not have it.");
    for (std::size_t i = 0; i < remedies.size(); ++i) tell(remedies[i].what, rows[i + 1]);
    const std::string without = unanswered({cured.answer}, rows[0].answers);
    if (rows[0].error.empty() && !without.empty()) page.paragraph(without);
    page.paragraph(
        "Each was tried by a run with all else as filed. What is cheapest is our guess; "
        "a flue belongs to a licensed practitioner.");
    std::cout << page.text();
}

}  // namespace

void add_explain_command(CLI::App& app) {
    const auto options = std::make_shared<ExplainOptions>();
    CLI::App* command = app.add_subcommand(
        "explain", "What each dimension does to the answers, and what cures a weak draw");
    command->add_option("STOVE", options->file, "stove file; - reads standard input")->required();
    command
        ->add_option("--answer", options->answers,
                     "which answers; `drawwell list answers` names all")
        ->allow_extra_args(false)
        ->type_name("ANSWER");
    command->add_option("--rows", options->rows, "how many lines for each; default 8")
        ->type_name("N");
    command
        ->add_option("--cure", options->symptom,
                     "instead: which single change ends smoke_back_s, or makes "
                     "'reserve_draw_min_pa >= 3'")
        ->type_name("SYMPTOM");
    command
        ->add_option("-o,--output", options->output,
                     "also draw the ranking, more and less of each to both sides (SVG)")
        ->type_name("FILE");
    command->add_flag("--force", options->study.force, "replace a file that is no figure of ours");
    add_study_options(*command, options->study);
    add_units_option(*command, options->units);
    command->footer(
        "Examples:\n"
        "  drawwell explain kitchen.toml --answer plate_centre_max_c -o plate.svg\n"
        "  drawwell explain kitchen.toml --cure smoke_back_s\n");
    command->callback([options] {
        const Study study = begin_study({options->file}, options->study);
        const Library library = read_library();
        Journal none;
        const Compute compute = [&](const Study& asked) {
            return compute_rows(asked, library, none, options->study);
        };
        if (options->symptom.empty())
            explain(*options, study, library, compute);
        else
            cure(*options, study, library, compute);
    });
}

}  // namespace drawwell

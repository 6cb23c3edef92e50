#include "cli/commands/compare_command.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <iostream>
#include <memory>
#include <optional>
#include <utility>

#include "cli/commands/standard_streams.h"
#include "cli/commands/stove_request.h"
#include "cli/commands/study_options.h"
#include "cli/commands/targets.h"
#include "cli/commands/units_option.h"
#include "cli/commands/watched_run.h"
#include "cli/read/read_library.h"
#include "cli/report/pending_file.h"
#include "cli/study/compare_files.h"
#include "cli/study/compare_table.h"
#include "cli/study/known_answers.h"
#include "cli/study/likely.h"
#include "cli/study/ranks.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

struct CompareOptions {
    std::vector<std::string> files;
    StudyOptions study;
    std::size_t sample = 0, days = 0;
    std::uint64_t seed = 1;
    std::string sort = "reserve_draw_min_pa", csv_file, output;
    std::vector<std::string> show;
    bool csv = false, hdf5 = false, json = false, series = false;
    UnitSystem units = UnitSystem::metric;
};

std::vector<Variant> variants_of(const CompareOptions& options) {
    const std::vector<Vary> varies = parse_varies(options.study.varies);
    std::vector<Variant> variants =
        options.sample > 0 ? sample_of(varies, options.sample, options.seed) : grid_of(varies);
    if (!varies.empty()) variants.insert(variants.begin(), Variant{});  // the stove as filed
    return variants;
}

/// Where a comparison is written.
struct Targets {
    fs::path result, journal;
    std::optional<fs::path> csv;
};

/// Every file that its stoves are made of.
std::vector<Input> all_inputs(const CompareOptions& options, const Study& study) {
    std::vector<Override> overrides = study.sets;
    for (const Variant& variant : study.variants)
        overrides.insert(overrides.end(), variant.settings.begin(), variant.settings.end());
    std::vector<Input> inputs;
    for (std::size_t i = 0; i < study.files.size(); ++i) {
        const std::vector<Input> of = inputs_of(options.files[i], study.files[i], overrides);
        inputs.insert(inputs.end(), of.begin(), of.end());
    }
    return inputs;
}

Targets find_targets(const CompareOptions& options, const Study& study) {
    Targets targets{
        result_target(options.output, options.files.front(), "-compare.h5", "compare.h5"), {}, {}};
    std::vector<Output> outputs;
    if (options.hdf5) outputs.push_back({"-o", targets.result, FileKind::comparison});
    if (options.csv) {
        targets.csv = table_target(options.csv_file, targets.result);
        outputs.push_back({"--csv", *targets.csv, FileKind::compare_table});
    }
    // Beside what the user wants written, since perhaps nothing else can be.
    targets.journal =
        journal_file(!options.hdf5 && !options.csv_file.empty() ? *targets.csv : targets.result);
    outputs.push_back({"the journal of its rows", targets.journal, FileKind::journal});
    check_outputs(outputs, all_inputs(options, study), options.study.force);
    return targets;
}

void check_series(const CompareOptions& options) {
    if (!options.series) return;
    if (!options.hdf5) throw InputError("--series needs -o FILE: they stand in the HDF5 file");
    if (options.days > 0)
        throw InputError("--series and --likely: medians of days have no series of their own");
}

void compare(const CompareOptions& options) {
    const std::unique_ptr<Ranks> ranks = launched_ranks();
    if (options.sort != "no") check_answer(options.sort, true);
    for (const std::string& answer : options.show) check_answer(answer);
    Study study = begin_study(options.files, options.study);
    study.variants = variants_of(options);
    study.days = options.days;
    study.seed = options.seed;
    if (study.stoves() < 2)
        throw InputError(
            "nothing to compare: name several stove files, or say what differs with --vary");
    const Library library = read_library();
    std::vector<std::string> answers = options.show;
    if (options.sort != "no") answers.push_back(options.sort);
    check_answers(answers, study, library);
    check_follows_of(study, library);
    Targets targets;
    auto journal = std::make_unique<Journal>();
    check_series(options);
    if (ranks->writer()) {
        targets = find_targets(options, study);
        journal = begin_journal(targets.journal, options.hdf5 || !options.csv_file.empty(),
                                options.study);
        if (options.series)
            journal->keep_only([&](const Row& row) {
                return !row.error.empty() || journal->has_series_of(row.identity);
            });
    }
    if (!ranks->begin()) return;
    for (StoveText& file : study.files) file.text = ranks->share(file.text);
    RowsWatch watch;
    watch.ranks = ranks.get();
    watch.series = options.series;
    const std::vector<Row> days =
        compute_rows(study, library, *journal, options.study, std::move(watch));
    if (!ranks->writer()) return;
    const std::vector<Row> rows = study.days > 0 ? median_rows(study, days) : days;
    if (options.hdf5)
        write_compare_hdf5(targets.result, study, rows, options.series ? journal.get() : nullptr);
    if (targets.csv) write_whole(*targets.csv, compare_csv(study, rows));
    if (options.json) {
        std::cout << compare_json(study, rows);
    } else if (!options.study.quiet) {
        CompareLook look;
        for (const Headline& headline : headlines())
            look.answers.push_back(in_system(headline, options.units));
        for (const std::string& answer : options.show)
            look.answers.push_back(in_system(headline_of(answer), options.units));
        look.sort = options.sort;
        look.as_given = options.sort == "no";
        look.base = !options.study.varies.empty() && options.files.size() == 1;
        // What mpirun gives each rank is a terminal, wherever its own output goes.
        look.colour = ranks->count() == 1 && terminal_with_colour();
        look.units = options.units;
        if (study.days > 0)
            look.below = [&](std::size_t stove, const Headline& headline) {
                return range_text(days_of(study, days, stove), headline);
            };
        std::cout << compare_table(study, rows, look);
    }
    flush_output();  // or a table that found no room would take all rows with it
    journal->remove();
    bool any = false;
    for (const Row& row : rows) any = any || row.error.empty();
    if (!any) throw InputError("none of the stoves could be computed");
}

}  // namespace

void add_compare_command(CLI::App& app) {
    const auto options = std::make_shared<CompareOptions>();
    CLI::App* command = app.add_subcommand(
        "compare", "Compare stoves: what a shorter riser, another barrel or flue would do");
    command->add_option("STOVE", options->files, "stove files; - reads standard input")->required();
    add_grid_options(*command, options->study);
    add_study_options(*command, options->study);
    command
        ->add_option("--sample", options->sample,
                     "in place of a grid, so many stoves spread evenly over --vary KEY=FROM:TO")
        ->type_name("N");
    command
        ->add_option("--likely", options->days,
                     "each stove on so many days and fires, on which all that is uncertain is "
                     "otherwise: medians, and below them what nine days of ten lie between")
        ->type_name("N");
    command->add_option("--seed", options->seed, "of sample and days; default 1")->type_name("N");
    command
        ->add_option("--sort", options->sort,
                     "answer by which stoves are sorted, after whether they draw; default "
                     "reserve_draw_min_pa, `no`: as given")
        ->type_name("ANSWER");
    command
        ->add_option("--show", options->show, "further answers; `drawwell list answers` names all")
        ->allow_extra_args(false)
        ->type_name("ANSWER");
    CLI::Option* csv = command->add_option("--csv", options->csv_file,
                                           "also write every answer of every stove as a table");
    csv->expected(0, 1)->type_name("[FILE]");
    CLI::Option* output = command->add_option("-o,--output", options->output,
                                              "also write every answer of every stove as HDF5");
    command->add_flag("--series", options->series,
                      "with -o: also the whole series of every stove, a group each (`series/3`)");
    command->add_flag("--json", options->json, "print the answers as JSON instead of the table");
    add_units_option(*command, options->units);
    command->footer(
        "The stove as its file says it is always among those compared. A stove that can't be "
        "built\n"
        "or computed is told in its row, the others go on. Ctrl-C, or a crash, loses nothing that\n"
        "was finished: --resume goes on. Under mpirun the processes share the stoves.\n\n"
        "Examples:\n"
        "  drawwell compare kitchen.toml --vary riser.top=650mm:850mm:50mm \\\n"
        "      --follow 'plate.underside = riser.top + 45mm'\n"
        "  drawwell compare kitchen.toml --vary riser.lining=board,bricks \\\n"
        "      --vary port.width=60mm,90mm\n"
        "  drawwell compare kitchen.toml neighbour.toml --csv\n");
    command->callback([options, csv, output] {
        options->csv = csv->count() > 0;
        options->hdf5 = output->count() > 0;
        compare(*options);
    });
}

}  // namespace drawwell

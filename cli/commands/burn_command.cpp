#include "cli/commands/burn_command.h"

#include <CLI/CLI.hpp>
#include <filesystem>
#include <iostream>
#include <memory>
#include <optional>
#include <utility>

#include "cli/commands/exit_codes.h"
#include "cli/commands/report_command.h"
#include "cli/commands/start_from.h"
#include "cli/commands/stove_request.h"
#include "cli/commands/study_options.h"
#include "cli/commands/targets.h"
#include "cli/commands/units_option.h"
#include "cli/commands/watched_run.h"
#include "cli/read/resolved_text.h"
#include "cli/report/file_name.h"
#include "cli/report/json_summary.h"
#include "cli/report/page.h"
#include "cli/report/page_text.h"
#include "cli/report/web/report_page.h"
#include "cli/report/write_csv.h"
#include "cli/report/write_hdf5.h"
#include "cli/study/likely.h"
#include "cli/study/likely_bands.h"
#include "models/burn.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

struct BurnOptions {
    StoveRequest stove;
    std::string output;
    std::string csv_file;
    std::string report_file;
    bool csv = false;
    bool report = false;
    bool json = false;
    bool force = false;
    bool quiet = false;
    std::string duration;
    std::string start;
    std::size_t days = 0;
    std::uint64_t seed = 1;
    unsigned threads = 0;
    UnitSystem units = UnitSystem::metric;
};

struct Targets {
    fs::path result, partial;  // partial: of a burn that is stopped
    std::optional<fs::path> csv, report;
};

/// `run.h5` becomes `run.partial.h5`.
fs::path partial_of(const fs::path& result) {
    const std::string extension = result.has_extension() ? result.extension().string() : ".h5";
    return with_ending(result, ".partial" + extension);
}

/// Where the results will go; refused before anything is computed if they can't.
Targets find_targets(const BurnOptions& options, std::vector<Input> inputs) {
    Targets targets;
    targets.result = result_target(options.output, options.stove.file, ".h5", "burn.h5");
    targets.partial = partial_of(targets.result);
    std::vector<Output> outputs{
        {"-o", targets.result, FileKind::result},
        {"what is kept of a stopped burn", targets.partial, FileKind::result}};
    if (options.csv) {
        targets.csv = table_target(options.csv_file, targets.result);
        outputs.push_back({"--csv", *targets.csv, FileKind::series_table});
    }
    if (options.report) {
        targets.report = page_target(options.report_file, targets.result);
        outputs.push_back({"--report", *targets.report, FileKind::page});
    }
    if (!options.start.empty())
        inputs.push_back({"what --start-from reads", options.start, FileKind::result});
    check_outputs(outputs, inputs, options.force);
    return targets;
}

BurnOutcome compute(const RequestedStove& requested, const SavedState* from, bool quiet) {
    const WatchedRun run(requested.stove.burn.duration, quiet);
    return run_burn(requested.stove, requested.library, run.watch(), from);
}

/// The same stove on other days and fires.
std::vector<Row> likely_days(const BurnOptions& options, const std::vector<Override>& duration,
                             const RequestedStove& requested, DaySeries& series) {
    if (options.days == 0) return {};
    if (!options.start.empty())
        throw InputError("--likely begins cold: leave out --start-from, or --likely");
    StudyOptions study_options;
    study_options.sets = options.stove.sets;
    study_options.threads = options.threads;
    study_options.quiet = options.quiet;
    Study study = begin_study({}, study_options);
    study.files.push_back(requested.file);
    study.sets.insert(study.sets.end(), duration.begin(), duration.end());
    study.variants = {Variant{}};
    study.days = options.days;
    study.seed = options.seed;
    Journal none;
    RowsWatch watch;
    watch.series = true;
    watch.finished = [&](const Row& day) { series.keep(day); };
    return compute_rows(study, requested.library, none, study_options, std::move(watch));
}

void burn(const BurnOptions& options) {
    std::vector<Override> duration;
    if (!options.duration.empty())
        duration.push_back({"burn.duration", options.duration, "--for " + options.duration});
    RequestedStove requested = read_requested(options.stove, duration);
    const Targets targets = find_targets(options, requested.inputs);
    std::optional<EndState> start;
    std::vector<std::string> remarks;
    if (!options.start.empty()) {
        start = read_end_state(options.start);
        remarks = begin_from(*start, requested.stove);
        requested.record.stove_resolved = resolved_text(requested.stove);
    }

    BurnOutcome outcome = compute(requested, start ? &start->state : nullptr, options.quiet);
    std::vector<std::string>& all = outcome.summary.remarks;
    all.insert(all.begin(), remarks.begin(), remarks.end());
    RunRecord& record = requested.record;
    record.created = utc_now();
    record.complete = outcome.complete;
    if (start) {
        record.started_from = options.start;
        record.started_from_created = start->created;
    }

    if (!outcome.complete) {
        const fs::path& partial = targets.partial;
        write_hdf5(partial, outcome.results, outcome.summary, record, &outcome.end_state);
        const double reached = outcome.results.time.empty() ? 0 : outcome.results.time.back();
        throw Interrupted("stopped " + show_duration(reached) +
                          " after lighting; as far as that, " + partial.string() +
                          " holds the burn (marked incomplete)");
    }

    write_hdf5(targets.result, outcome.results, outcome.summary, record, &outcome.end_state);
    if (targets.csv) write_csv(*targets.csv, outcome.results);
    // At once, should the days be stopped; then with what they say.
    const auto report = [&] {
        if (targets.report) write_report(*targets.report, {targets.result.string()});
    };
    report();
    DaySeries series;
    const std::vector<Row> days = likely_days(options, duration, requested, series);
    if (!days.empty()) {
        LikelyRanges likely = likely_ranges(days);
        add_bands(likely, days, series);
        write_hdf5(targets.result, outcome.results, outcome.summary, record, &outcome.end_state,
                   likely);
        report();
    }
    if (options.json && days.empty())
        std::cout << json_summary(outcome.summary, record, targets.result);
    else if (options.json)
        std::cout << with_likely(json_summary(outcome.summary, record, targets.result), days);
    else if (!options.quiet) {
        PageFrame frame;
        frame.title = record.title;
        frame.duration = requested.stove.burn.duration;
        if (start) frame.begun_from = begun_from(*start, options.start);
        frame.colour = terminal_with_colour();
        frame.units = options.units;
        frame.files.emplace_back("result (HDF5)", targets.result);
        if (targets.csv) frame.files.emplace_back("table (CSV)", *targets.csv);
        if (targets.report) frame.files.emplace_back("report page (HTML)", *targets.report);
        std::cout << burn_page(outcome.summary, frame);
        if (!days.empty()) std::cout << likely_page(days, frame.colour, options.units);
    }
}

}  // namespace

void add_burn_command(CLI::App& app) {
    const auto options = std::make_shared<BurnOptions>();
    CLI::App* command = app.add_subcommand(
        "burn", "Compute a burn: does it draw, how hot does it get, where does the heat go");
    add_stove_options(*command, options->stove);
    command->add_option("-o,--output", options->output,
                        "result file (HDF5); default: the stove file's name with .h5, here");
    CLI::Option* csv = command->add_option(
        "--csv", options->csv_file, "also write the series as a table; default: beside the result");
    csv->expected(0, 1)->type_name("[FILE]");
    CLI::Option* page = command->add_option("--report", options->report_file,
                                            "also write a page for a browser (HTML); default: "
                                            "beside the result");
    page->expected(0, 1)->type_name("[FILE]");
    command->add_flag("--json", options->json, "print the answers as JSON instead of the page");
    add_units_option(*command, options->units);
    command->add_option("--for", options->duration, "how long a burn, e.g. 6h")->type_name("TIME");
    add_start_option(*command, options->start);
    command
        ->add_option("--likely", options->days,
                     "besides, so many other days and fires, on which all that is uncertain is "
                     "otherwise: what the answers likely are")
        ->type_name("N");
    command->add_option("--seed", options->seed, "of those days; default 1")->type_name("N");
    command
        ->add_option("--threads", options->threads,
                     "how many of them at a time; default: all cores")
        ->type_name("N");
    command->add_flag("--force", options->force, "replace a file that is no result of drawwell");
    command->add_flag("--quiet", options->quiet, "no page, no progress");
    command->footer(
        "An earlier result is replaced, other files only with --force. Ctrl-C saves what there is\n"
        "as NAME.partial.h5.\n\n"
        "Examples:\n"
        "  drawwell burn kitchen.toml --set 'flue.stack.length=3 m' -o higher.h5\n"
        "  drawwell burn kitchen.toml --start-from kitchen.h5 --for 1h -o later.h5\n"
        "      goes on where kitchen.h5 ended: hot walls, embers, half-burnt wood\n");
    command->callback([options, csv, page] {
        options->report = page->count() > 0;
        options->csv = csv->count() > 0;
        burn(*options);
    });
}

}  // namespace drawwell

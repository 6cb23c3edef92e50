#include "cli/commands/burn_command.h"

#include <unistd.h>

#include <CLI/CLI.hpp>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <memory>
#include <optional>

#include "cli/commands/exit_codes.h"
#include "cli/commands/interrupt_watch.h"
#include "cli/commands/progress.h"
#include "cli/commands/read_text.h"
#include "cli/commands/start_from.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "cli/read/resolved_text.h"
#include "cli/report/json_summary.h"
#include "cli/report/page.h"
#include "cli/report/page_text.h"
#include "cli/report/pending_file.h"
#include "cli/report/write_csv.h"
#include "cli/report/write_hdf5.h"
#include "models/burn.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

struct BurnOptions {
    std::string stove;
    std::string output;
    std::string csv_file;
    bool csv = false;
    bool json = false;
    bool force = false;
    bool quiet = false;
    std::vector<std::string> sets;
    std::string duration;
    std::string start;
};

struct Targets {
    fs::path result;
    std::optional<fs::path> csv;
};

/// `run.h5` becomes `run.partial.h5`.
fs::path partial_of(const fs::path& result) {
    fs::path partial = result;
    const std::string extension = result.has_extension() ? result.extension().string() : ".h5";
    return partial.replace_extension(".partial" + extension);
}

void check_target(const fs::path& file, bool ours, bool force) {
    std::error_code ignored;
    if (fs::exists(file, ignored) && !fs::is_regular_file(file, ignored))
        throw FileError("cannot write " + file.string() + " (it is not a plain file)");
    if (fs::exists(file, ignored) && !ours && !force)
        throw InputError(
            file.string() +
            " exists and is no result of drawwell: name another with -o, or replace it "
            "with --force");
    check_writable(file);
}

/// Refuses to replace the very run that the burn begins from, which nobody means by saying nothing.
void keep_start(const BurnOptions& options, const fs::path& result) {
    std::error_code ignored;
    if (!options.start.empty() && !options.force && fs::equivalent(options.start, result, ignored))
        throw InputError(
            "the result would replace " + result.string() +
            ", from which it begins: name another with -o, or replace it with --force");
}

/// Where the results will go; refused before anything is computed if they can't.
Targets find_targets(const BurnOptions& options) {
    Targets targets;
    targets.result = options.output;
    if (options.output.empty())
        targets.result = options.stove == "-" ? fs::path("burn.h5")
                                              : fs::path(options.stove).stem().concat(".h5");
    check_target(targets.result, is_drawwell_result(targets.result), options.force);
    keep_start(options, targets.result);
    if (options.csv) {
        targets.csv = options.csv_file;
        if (options.csv_file.empty())
            targets.csv = targets.result.parent_path() / targets.result.stem().concat(".csv");
        if (*targets.csv == targets.result)
            throw InputError("the table and the result file are both called " +
                             targets.result.string());
        check_target(*targets.csv, is_drawwell_csv(*targets.csv), options.force);
    }
    return targets;
}

std::vector<Override> overrides_of(const BurnOptions& options) {
    std::vector<Override> overrides;
    for (const std::string& set : options.sets) overrides.push_back(parse_override(set));
    if (!options.duration.empty()) overrides.push_back({"burn.duration", options.duration});
    return overrides;
}

BurnOutcome compute(const Stove& stove, const Library& library, const SavedState* from,
                    bool quiet) {
    const InterruptWatch interrupt;
    Progress progress(std::cerr, stove.burn.duration, isatty(STDERR_FILENO) != 0);
    BurnWatch watch;
    watch.stop = &interrupt.raised();
    if (!quiet) watch.progress = [&](double time) { progress.reached(time); };
    return run_burn(stove, library, watch, from);
}

bool terminal_with_colour() {
    return isatty(STDOUT_FILENO) != 0 && std::getenv("NO_COLOR") == nullptr;
}

void burn(const BurnOptions& options) {
    const std::vector<Override> overrides = overrides_of(options);
    const std::string text = read_text(options.stove);
    const std::string name = options.stove == "-" ? "standard input" : options.stove;
    const Library library = read_library();
    Stove stove = read_stove(text, name, overrides, library);
    const Targets targets = find_targets(options);
    std::optional<EndState> start;
    std::vector<std::string> remarks;
    if (!options.start.empty()) {
        start = read_end_state(options.start);
        remarks = begin_from(*start, stove);
    }

    BurnOutcome outcome = compute(stove, library, start ? &start->state : nullptr, options.quiet);
    std::vector<std::string>& all = outcome.summary.remarks;
    all.insert(all.begin(), remarks.begin(), remarks.end());
    RunRecord record;
    record.title = stove.title;
    record.stove_name = name;
    record.stove_text = text;
    record.stove_resolved = resolved_text(stove);
    for (const Override& set : overrides) record.overrides.push_back(set.key + "=" + set.value);
    record.created = utc_now();
    record.complete = outcome.complete;
    if (start) {
        record.started_from = options.start;
        record.started_from_created = start->created;
    }

    if (!outcome.complete) {
        const fs::path partial = partial_of(targets.result);
        check_target(partial, is_drawwell_result(partial), options.force);
        write_hdf5(partial, outcome.results, outcome.summary, record, &outcome.end_state);
        const double reached = outcome.results.time.empty() ? 0 : outcome.results.time.back();
        throw Interrupted("stopped " + show_duration(reached) +
                          " after lighting; as far as that, " + partial.string() +
                          " holds the burn (marked incomplete)");
    }

    write_hdf5(targets.result, outcome.results, outcome.summary, record, &outcome.end_state);
    if (targets.csv) write_csv(*targets.csv, outcome.results);
    if (options.json)
        std::cout << json_summary(outcome.summary, record, targets.result);
    else if (!options.quiet) {
        PageFrame frame;
        frame.title = stove.title;
        frame.duration = stove.burn.duration;
        if (start) frame.begun_from = begun_from(*start, options.start);
        frame.colour = terminal_with_colour();
        frame.files.emplace_back("result (HDF5)", targets.result);
        if (targets.csv) frame.files.emplace_back("table (CSV)", *targets.csv);
        std::cout << burn_page(outcome.summary, frame);
    }
}

}  // namespace

void add_burn_command(CLI::App& app) {
    const auto options = std::make_shared<BurnOptions>();
    CLI::App* command = app.add_subcommand(
        "burn", "Compute a burn: does it draw, how hot does it get, where does the heat go");
    command->add_option("STOVE", options->stove, "stove file; - reads standard input")->required();
    command->add_option("-o,--output", options->output,
                        "result file (HDF5); default: the stove file's name with .h5, here");
    CLI::Option* csv = command->add_option(
        "--csv", options->csv_file, "also write the series as a table; default: beside the result");
    csv->expected(0, 1)->type_name("[FILE]");
    command->add_flag("--json", options->json, "print the answers as JSON instead of the page");
    command
        ->add_option("--set", options->sets,
                     "replace what the stove file says, e.g. --set 'flue.stack.length=3 m'; may be "
                     "repeated; `drawwell list keys` names all")
        ->allow_extra_args(false)
        ->type_name("KEY=VALUE");
    command->add_option("--for", options->duration, "how long a burn, e.g. 6h")->type_name("TIME");
    add_start_option(*command, options->start);
    command->add_flag("--force", options->force, "replace a file that is no result of drawwell");
    command->add_flag("--quiet", options->quiet, "no page, no progress");
    command->footer(
        "An earlier result is replaced, other files only with --force. Ctrl-C saves what there is\n"
        "as NAME.partial.h5.\n\n"
        "Examples:\n"
        "  drawwell burn kitchen.toml --set 'flue.stack.length=3 m' -o higher.h5\n"
        "  drawwell burn kitchen.toml --start-from kitchen.h5 --for 1h -o later.h5\n"
        "      goes on where kitchen.h5 ended: hot walls, embers and half-burnt wood in it\n");
    command->callback([options, csv] {
        options->csv = csv->count() > 0;
        burn(*options);
    });
}

}  // namespace drawwell

#include "cli/commands/fit_command.h"

#include <fmt/format.h>
#include <unistd.h>

#include <CLI/CLI.hpp>
#include <filesystem>
#include <iostream>
#include <memory>
#include <mutex>
#include <optional>

#include "cli/commands/exit_codes.h"
#include "cli/commands/interrupt_watch.h"
#include "cli/commands/progress_line.h"
#include "cli/commands/read_text.h"
#include "cli/commands/standard_streams.h"
#include "cli/commands/stove_request.h"
#include "cli/commands/study_options.h"
#include "cli/commands/targets.h"
#include "cli/commands/watched_run.h"
#include "cli/read/read_library.h"
#include "cli/read/visible_text.h"
#include "cli/report/pending_file.h"
#include "cli/study/fit/match_page.h"
#include "cli/study/fit/matched_stove.h"
#include "cli/study/fit/tracks.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

struct FitOptions {
    std::string file, log, clock, figure, save;
    std::vector<std::string> inputs;
    SensorWishes sensors;
    bool rest_as_filed = false, json = false;
    StudyOptions study;
};

/// Tells how many burns are computed, by whichever thread finished one.
class FitProgress {
  public:
    FitProgress() : line_(std::cerr, is_terminal(STDERR_FILENO), steady_seconds) {}
    void finished(std::size_t burns) {
        const std::lock_guard lock(speaking_);
        if (!line_.due()) return;
        line_.say(fmt::format("{} burns computed, {:.3g} a second", burns,
                              static_cast<double>(burns) / line_.elapsed()));
    }

  private:
    ProgressLine line_;
    std::mutex speaking_;
};

/// Refuses, before anything is computed, what must not be written.
void check_targets(const FitOptions& options, const Study& study, const fs::path& journal) {
    std::vector<Output> outputs{{"the journal of its burns", journal, FileKind::journal}};
    if (!options.figure.empty()) outputs.push_back({"-o", options.figure, FileKind::figure});
    if (!options.save.empty()) outputs.push_back({"--save", options.save, FileKind::stove});
    std::vector<Input> inputs = inputs_of(options.file, study.files.front(), study.sets);
    inputs.push_back({"the log", options.log});
    check_outputs(outputs, inputs, options.study.force);
}

Match compute(const MatchRequest& request, Journal& journal, const StudyOptions& options) {
    const InterruptWatch interrupt;
    FitProgress progress;
    RowsWatch watch{.threads = options.threads, .stop = &interrupt.raised(), .progress = {}};
    if (!options.quiet) watch.progress = [&](std::size_t burns) { progress.finished(burns); };
    try {
        return match_log(request, journal, watch);
    } catch (const MatchStopped&) {
        throw Interrupted(journal.keeps() ? "stopped; the burns that were finished are kept, "
                                            "--resume goes on from there and repeats none of them"
                                          : "stopped; nothing is kept");
    }
}

void fit(const FitOptions& options) {
    Study study = begin_study({options.file}, options.study);
    study.variants = {Variant{}};
    // Beside what the user wants written, since perhaps nothing else can be.
    const std::string& named = options.save.empty() ? options.figure : options.save;
    const fs::path kept = journal_file(result_target(named, options.file, "-fit.h5", "fit.h5"));
    check_targets(options, study, kept);
    const Library library = read_library();
    check_follows_of(study, library);
    const Stove stove = stove_of(study, 0, library);
    const std::string name = options.log == "-" ? "standard input" : options.log;
    const std::vector<LoggedSensor> logged =
        sensors_of(read_log(read_text(options.log), name), options.sensors);
    check_places(logged, stove, library);
    MatchRequest request{
        study, library, logged, {}, parse_clock_offset(options.clock), options.rest_as_filed};
    for (const std::string& text : options.inputs)
        request.inputs.push_back(parse_fit_input(text, stove, library));
    const std::unique_ptr<Journal> journal = begin_journal(kept, !named.empty(), options.study);
    const Match match = compute(request, *journal, options.study);

    std::optional<MatchedStove> matched;
    if (!options.save.empty()) {
        matched = matched_stove(study.files.front(), study.sets, library, match, name);
        write_whole(options.save, matched->text);
    }
    if (!options.figure.empty()) write_whole(options.figure, match_svg(match, name));
    if (options.json) {
        std::cout << match_json(match, name);
    } else if (!options.study.quiet) {
        std::cout << match_page(match, name, terminal_with_colour());
        if (!options.figure.empty()) std::cout << "\nFigure: " << visible(options.figure) << "\n";
        if (matched) {
            std::cout << fmt::format("\n{}: sets {}\n", visible(options.save),
                                     matched->set.empty()
                                         ? "nothing"
                                         : fmt::format("{}", fmt::join(matched->set, ", ")));
            for (const std::string& each : matched->unset)
                std::cout << "  a stove file can't say " << each << "\n";
        }
    }
    flush_output();  // or a page that found no room would take all burns with it
    journal->remove();
}

}  // namespace

void add_fit_command(CLI::App& app) {
    const auto options = std::make_shared<FitOptions>();
    CLI::App* command = app.add_subcommand(
        "fit", "Match a log of a real burn: what of the stove, wood and day was otherwise");
    command->add_option("STOVE", options->file, "stove file; - reads standard input")->required();
    command
        ->add_option("--log", options->log,
                     "table (CSV) with a header: a time, and what instruments read")
        ->required()
        ->type_name("FILE.csv");
    command
        ->add_option("--map", options->sensors.maps,
                     "what a column of the log measured: 'TC1=outlet_gas_temperature', "
                     "'TC2=plate_temperature[0.1m] in °F', 'balance=fuel_mass in g' (all that lies "
                     "in the stove, ash too); may be repeated")
        ->allow_extra_args(false)
        ->type_name("HEADER=COLUMN");
    command
        ->add_option("--bead", options->sensors.beads,
                     "a thermocouple in gas: 'TC1=1.5mm bare', 'TC1=3mm shielded', 'TC1=1mm "
                     "emissivity 0.6', 'TC1=none' (reads the gas itself); default 3 mm bare")
        ->allow_extra_args(false)
        ->type_name("HEADER=BEAD");
    command
        ->add_option("--noise", options->sensors.noises,
                     "how far a reading may be off, one standard deviation, and behind a comma how "
                     "far all of them alike: 'TC1=2K,3K'")
        ->allow_extra_args(false)
        ->type_name("HEADER=NOISE");
    command
        ->add_option("--clock-offset", options->clock,
                     "what the log's clock showed at lighting: 4min, 0:04:00, -90s; with a spread "
                     "it is fitted too: '4min+-1min'; default 0")
        ->type_name("TIME");
    command
        ->add_option(
            "--fit", options->inputs,
            "what to fit: something uncertain by its name in `explain`, or a key with what "
            "was known of it, 'port.width=70mm+-5mm'; may be repeated; default: what the "
            "log tells best")
        ->allow_extra_args(false)
        ->type_name("NAME");
    command->add_flag("--rest-as-filed", options->rest_as_filed,
                      "all that is not fitted counts as known, else as uncertain as data/ says");
    command
        ->add_option("-o,--output", options->figure,
                     "also draw measured, filed and matched, and what is left (SVG)")
        ->type_name("FILE.svg");
    command
        ->add_option("--save", options->save,
                     "write the stove file with the keys set that were matched")
        ->type_name("FILE.toml");
    command->add_flag("--json", options->json, "print it as JSON instead of the page");
    add_study_options(*command, options->study);
    command->add_flag("--resume", options->study.resume, "go on where a stopped match left off");
    command->add_flag("--force", options->study.force,
                      "begin anew over a match left unfinished; replace files");
    command->footer(
        "The log's first row names its columns. One is the time: time_s, time_min, or time with\n"
        "h:mm:ss. Units stand in the header, draft_pa, 'TC1 (°F)', 'draft [mmH2O]', or behind "
        "--map;\n"
        "temperatures without one are in °C. A column called as the model's own needs no --map;\n"
        "`drawwell list columns` names them. Empty cells and nan are gaps. Load when the stove "
        "file\n"
        "says you did: times of loads are not fitted.\n\n"
        "How to log: a thermocouple in the gas at the flue outlet tells most for its price, wood "
        "on\n"
        "a scale next (`What to log next` says it for your stove). Read each 10 to 60 s, from "
        "before\n"
        "lighting. Probes leave no hole behind that draws air, and no lead where it burns; watch\n"
        "a carbon monoxide alarm, as with every burn.\n\n"
        "Examples:\n"
        "  drawwell fit kitchen.toml --log burn.csv --clock-offset 4min \\\n"
        "      --map TC1=outlet_gas_temperature --bead 'TC1=1.5mm bare' \\\n"
        "      --map 'TC2=plate_temperature[0m]' -o residuals.svg\n"
        "  drawwell fit kitchen.toml --log burn.csv --clock-offset '4min+-1min' \\\n"
        "      --map TC1=outlet_gas_temperature --fit day.wood_moisture \\\n"
        "      --fit fuel_bed.surface_rate --save matched.toml\n");
    command->callback([options] { fit(*options); });
}

}  // namespace drawwell

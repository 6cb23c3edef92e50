#include "cli/commands/draw_command.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <filesystem>
#include <iostream>
#include <memory>
#include <optional>

#include "cli/commands/exit_codes.h"
#include "cli/commands/stove_request.h"
#include "cli/commands/targets.h"
#include "cli/commands/watched_run.h"
#include "cli/read/units.h"
#include "cli/report/draw_csv.h"
#include "cli/report/draw_json.h"
#include "cli/report/draw_svg.h"
#include "cli/report/draw_table.h"
#include "cli/report/page_text.h"
#include "cli/report/pending_file.h"
#include "models/draw_study.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

struct DrawOptions {
    StoveRequest stove;
    std::string at;
    std::string output;
    std::string csv_file;
    bool csv = false;
    bool json = false;
    bool force = false;
    bool quiet = false;
};

struct Targets {
    fs::path figure;
    std::optional<fs::path> csv;
};

/// Where the figure and the table will go; refused before anything is computed if they can't.
Targets find_targets(const DrawOptions& options, const RequestedStove& requested) {
    Targets targets;
    targets.figure = result_target(options.output, options.stove.file, "-draw.svg", "draw.svg");
    std::vector<Output> outputs{{"-o", targets.figure, FileKind::figure}};
    if (options.csv) {
        targets.csv = table_target(options.csv_file, targets.figure);
        outputs.push_back({"--csv", *targets.csv, FileKind::draw_table});
    }
    check_outputs(outputs, requested.inputs, options.force);
    return targets;
}

double instant_of(const std::string& at) {
    double time = 0;
    try {
        time = parse_quantity(at, Quantity::time);
    } catch (const InputError& error) {
        throw InputError(fmt::format("--at {}: {}", at, error.what()));
    }
    if (time < 0) throw InputError(fmt::format("--at {}: that is before lighting", at));
    return time;
}

DrawStudy compute(const RequestedStove& requested, double time, bool quiet) {
    const WatchedRun run(time, quiet);
    DrawStudy study;
    try {
        study = study_draw(requested.stove, requested.library, time, run.watch());
    } catch (const std::exception&) {
        // Stopped halfway there is no draw to study; that is no fault.
        if (!run.interrupted()) throw;
    }
    if (run.interrupted()) throw Interrupted("stopped; nothing was written");
    return study;
}

void draw(const DrawOptions& options) {
    const double time = instant_of(options.at);
    const RequestedStove requested = read_requested(options.stove);
    const Targets targets = find_targets(options, requested);
    const DrawStudy study = compute(requested, time, options.quiet);

    write_whole(targets.figure, draw_svg(study, requested.stove.title));
    if (targets.csv) write_whole(*targets.csv, draw_csv(study));
    if (options.json)
        std::cout << draw_json(study, requested.record, targets.figure);
    else if (!options.quiet) {
        DrawFrame frame;
        frame.title = requested.stove.title;
        frame.colour = terminal_with_colour();
        frame.files.emplace_back("figure (SVG)", targets.figure);
        if (targets.csv) frame.files.emplace_back("table (CSV)", *targets.csv);
        std::cout << draw_page(study, frame);
    }
}

}  // namespace

void add_draw_command(CLI::App& app) {
    const auto options = std::make_shared<DrawOptions>();
    CLI::App* command = app.add_subcommand(
        "draw", "The draw at one moment: what push it withstands, and whether it can turn");
    add_stove_options(*command, options->stove);
    command->add_option("--at", options->at, "the moment, after lighting, e.g. 60min")
        ->required()
        ->type_name("TIME");
    command->add_option("-o,--output", options->output,
                        "figure (SVG); default: the stove file's name with -draw.svg, here");
    CLI::Option* csv = command->add_option(
        "--csv", options->csv_file, "also write the curve as a table; default: beside the figure");
    csv->expected(0, 1)->type_name("[FILE]");
    command->add_flag("--json", options->json, "print the answers as JSON instead of the page");
    command->add_flag("--force", options->force, "replace a file that is no result of drawwell");
    command->add_flag("--quiet", options->quiet, "no page, no progress");
    command->footer(
        "The stove is burned as far as that moment. Then its flow is held at one value after\n"
        "another, from smoke out of the feed to much air into it, and the push against the draw\n"
        "(wind on the flue, a fan in the room) that would balance each is worked out: once with\n"
        "the walls as warm as they are, as in a short push, and once with walls that have "
        "followed\n"
        "the flow, as in a push that lasts. The top of such a curve is what the draw withstands;\n"
        "where it crosses nothing, the stove stands by itself: it stays there, or the least thing\n"
        "tips it.\n\n"
        "An earlier figure is replaced, other files only with --force. Ctrl-C leaves no file.\n\n"
        "Example:\n"
        "  drawwell draw kitchen.toml --at 60min\n"
        "      the draw an hour after lighting; its figure in kitchen-draw.svg\n"
        "  drawwell draw kitchen.toml --at 5min --set flue.stack.length=1.1m -o low.svg\n"
        "      the same just after lighting, with a lower flue\n");
    command->callback([options, csv] {
        options->csv = csv->count() > 0;
        draw(*options);
    });
}

}  // namespace drawwell

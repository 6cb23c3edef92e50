#include "cli/commands/plot_command.h"

#include <CLI/CLI.hpp>
#include <array>
#include <filesystem>
#include <memory>

#include "cli/commands/series_request.h"
#include "cli/commands/targets.h"
#include "cli/report/pending_file.h"
#include "cli/report/series_svg.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

struct PlotOptions {
    SeriesRequest series;
    std::string output;
    bool force = false;
};

void plot(const PlotOptions& options) {
    const std::filesystem::path target =
        result_target(options.output, options.series.file, ".svg", "plot.svg");
    check_outputs(std::array{Output{"-o", target, FileKind::figure}},
                  std::array{Input{"the result", options.series.file}}, options.force);
    if (options.series.columns.empty())
        throw InputError("--columns is missing: which series? `drawwell list columns` names all");
    const ChosenSeries chosen = read_series(options.series);
    write_whole(target, series_svg(chosen.results, chosen.title));
}

}  // namespace

void add_plot_command(CLI::App& app) {
    const auto options = std::make_shared<PlotOptions>();
    CLI::App* command = app.add_subcommand("plot", "Series of a result as a figure (SVG)");
    add_series_options(*command, options->series);
    command
        ->add_option("-o,--output", options->output,
                     "figure (SVG); default: the result's name with .svg, here")
        ->type_name("FILE");
    command->add_flag("--force", options->force, "replace a file that is no figure of drawwell");
    command->footer(
        "Columns of one unit share a figure; others stand below it. A divided part shows up to "
        "six\n"
        "of its cells; one is named with its place: 'plate_temperature[0.105m]'.\n\n"
        "Example:\n"
        "  drawwell plot kitchen.h5 --columns plate_temperature,heat_release -o plate.svg\n");
    command->callback([options] { plot(*options); });
}

}  // namespace drawwell

#include "cli/commands/export_command.h"

#include <CLI/CLI.hpp>
#include <array>
#include <iostream>
#include <memory>

#include "cli/commands/series_request.h"
#include "cli/commands/targets.h"
#include "cli/report/write_csv.h"

namespace drawwell {
namespace {

struct ExportOptions {
    SeriesRequest series;
    std::string csv_file;
    bool force = false;
};

void export_series(const ExportOptions& options) {
    if (!options.csv_file.empty())
        check_outputs(std::array{Output{"--csv", options.csv_file, FileKind::series_table}},
                      std::array{Input{"the result", options.series.file}}, options.force);
    const Results results = read_series(options.series).results;
    if (options.csv_file.empty())
        std::cout << csv_text(results);
    else
        write_csv(options.csv_file, results);
}

}  // namespace

void add_export_command(CLI::App& app) {
    const auto options = std::make_shared<ExportOptions>();
    CLI::App* command =
        app.add_subcommand("export", "Series of a result as a table for other programs");
    add_series_options(*command, options->series);
    command->add_option("--csv", options->csv_file, "write the table here; default: print it")
        ->type_name("FILE");
    command->add_flag("--force", options->force, "replace a file that is no table of drawwell");
    command->footer(
        "The header names each column with its unit: temperatures in degrees Celsius, all else in\n"
        "SI. `drawwell list columns` explains them. No value is made up between instants.\n\n"
        "Example:\n"
        "  drawwell export kitchen.h5 --columns drive,reserve_draw --every 60s\n");
    command->callback([options] { export_series(*options); });
}

}  // namespace drawwell

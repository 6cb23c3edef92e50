#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <iostream>
#include <string>
#include <string_view>
#include <vector>

#include "cli/commands/burn_command.h"
#include "cli/commands/compare_command.h"
#include "cli/commands/draw_command.h"
#include "cli/commands/exit_codes.h"
#include "cli/commands/explain_command.h"
#include "cli/commands/export_command.h"
#include "cli/commands/find_command.h"
#include "cli/commands/fit_command.h"
#include "cli/commands/help_formatter.h"
#include "cli/commands/list_command.h"
#include "cli/commands/new_command.h"
#include "cli/commands/plot_command.h"
#include "cli/commands/report_command.h"
#include "cli/commands/sheet_command.h"
#include "cli/commands/standard_streams.h"
#include "cli/read/nearest.h"
#include "cli/read/several_problems.h"
#include "cli/read/visible_text.h"
#include "cli/report/pending_file.h"
#include "cli/study/ranks.h"
#include "solver/errors.h"

namespace {

constexpr const char* footer =
    "Two commands to begin with:\n"
    "  drawwell new kitchen.toml --bore 125mm   a file to start from, explained\n"
    "  drawwell burn kitchen.toml               its burn: a page, and kitchen.h5\n\n"
    "`drawwell COMMAND --help` tells more.\n\n"
    "Exit codes: 0 done; 2 something in the stove file or on the command line needs\n"
    "mending; 3 the calculation failed; 4 a file could not be read or written;\n"
    "130 stopped by Ctrl-C.\n";

/// What is wrong with a command line that could not be read; `first` is its first word.
std::string misread(const CLI::App& app, const std::string& first, const CLI::ParseError& error) {
    using namespace drawwell;
    std::vector<std::string> known;
    for (const CLI::App* command : app.get_subcommands({})) known.push_back(command->get_name());
    const bool command = std::find(known.begin(), known.end(), first) != known.end();
    if (command || first.starts_with('-'))
        return error_text(error) + "\nRun with --help for more information.";
    return fmt::format("no command is called \"{}\"{}; `drawwell --help` names all", visible(first),
                       did_you_mean(first, known));
}

int run(int argc, char** argv) {
    using namespace drawwell;
    CLI::App app("drawwell: what a wood-burning J-tube stove does before it is built", "drawwell");
    app.set_version_flag("--version", "drawwell " DRAWWELL_VERSION);
    app.require_subcommand(1);
    app.formatter(help_formatter());  // before the commands, which take it over
    add_burn_command(app);
    add_compare_command(app);
    add_find_command(app);
    add_explain_command(app);
    add_fit_command(app);
    add_draw_command(app);
    add_sheet_command(app);
    add_report_command(app);
    add_export_command(app);
    add_plot_command(app);
    add_new_command(app);
    add_list_command(app);
    // Under mpirun only a comparison is shared; all else is the first process's alone.
    if (!speaks_for_all() && (argc < 2 || std::string_view(argv[1]) != "compare"))
        return exit_success;
    app.footer(footer);  // last, or commands would take it over
    if (argc < 2) {
        std::cout << app.help();
        flush_output();
        return exit_input;
    }
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        const bool asked = error.get_exit_code() == 0;  // for help, or the version
        if (speaks_for_all()) {
            if (asked)
                app.exit(error);
            else
                std::cerr << misread(app, argv[1], error) << "\n";
        }
        if (!asked) return exit_input;
    }
    // A full disk or a closed pipe behind standard output is an error as well.
    flush_output();
    return exit_success;
}

int fail(const std::exception& error, int code) {
    if (drawwell::speaks_for_all()) std::cerr << drawwell::error_text(error) << "\n";
    return code;
}

}  // namespace

int main(int argc, char** argv) {
    using namespace drawwell;
    prepare_streams();
    try {
        return run(argc, argv);
    } catch (const InputError& error) {
        return fail(error, exit_input);
    } catch (const Interrupted& error) {
        return fail(error, exit_interrupted);
    } catch (const FileError& error) {
        return fail(error, exit_file);
    } catch (const std::exception& error) {
        std::cerr << "the calculation failed, which is the program's fault: " << error_text(error)
                  << "\n";
        return exit_solver;
    }
}

#include "cli/commands/report_command.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <array>
#include <memory>
#include <set>

#include "cli/commands/read_text.h"
#include "cli/commands/targets.h"
#include "cli/report/file_name.h"
#include "cli/report/pending_file.h"
#include "cli/report/read_result.h"
#include "cli/report/web/report_page.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

struct ReportOptions {
    std::vector<std::string> results;
    std::string output;
    std::string log;
    bool force = false;
};

/// What tells results apart: their names, with folders before them where names are the same.
std::vector<std::string> names_of_runs(const std::vector<std::string>& results) {
    std::vector<std::string> names;
    names.reserve(results.size());
    for (const std::string& result : results) names.push_back(fs::path(result).stem().string());
    if (std::set<std::string>(names.begin(), names.end()).size() == names.size()) return names;
    return told_names(results);
}

void report(const ReportOptions& options) {
    const fs::path page = page_target(options.output, options.results.front());
    std::vector<Input> inputs;
    for (const std::string& result : options.results) inputs.push_back({"a result", result});
    if (!options.log.empty()) inputs.push_back({"the log", options.log});
    check_outputs(std::array{Output{"-o", page, FileKind::page}}, inputs, options.force);
    write_report(page, options.results, options.log);
}

}  // namespace

fs::path page_target(const std::string& file, const fs::path& result) {
    return file.empty() ? with_ending(result, ".html") : fs::path(file);
}

void write_report(const fs::path& page, const std::vector<std::string>& results,
                  const std::string& log) {
    if (results.size() > most_runs)
        throw InputError(
            fmt::format("a page compares {} results at most, not {}", most_runs, results.size()));
    const std::vector<std::string> names = names_of_runs(results);
    std::vector<PageRun> runs;
    for (std::size_t i = 0; i < results.size(); ++i)
        runs.push_back(page_run(read_result(results[i]), names[i]));
    if (!log.empty()) try {
            add_log(runs.front(), read_burn_log(read_text(log), runs.front().burn.results));
        } catch (const InputError& error) {
            throw InputError("--log " + log + ": " + error.what());
        }
    write_whole(page, report_page(runs));
}

void add_report_command(CLI::App& app) {
    const auto options = std::make_shared<ReportOptions>();
    CLI::App* command = app.add_subcommand(
        "report", "A result, or several laid over one another, as a page (HTML)");
    command->add_option("RUN", options->results, "results of drawwell burn (HDF5)")->required();
    command
        ->add_option("-o,--output", options->output,
                     "page (HTML); default: the first result's name with .html, beside it")
        ->type_name("FILE");
    command
        ->add_option("--log", options->log,
                     "what you noted during that burn (CSV), laid over its figures as dots: first "
                     "column time_s or time_min, the others headed as `drawwell export` does")
        ->type_name("FILE");
    command->add_flag("--force", options->force, "replace a file that is no page of drawwell");
    command->footer(
        "The page is one file that opens by a double click and needs no network: verdict, figures\n"
        "over time, the stove cut open, the plate, where the heat goes, cautions, the stove file.\n"
        "Of several results the answers stand beside each other, with the difference from the "
        "first.\n\n"
        "Examples:\n"
        "  drawwell report kitchen.h5\n"
        "  drawwell report kitchen.h5 higher.h5 -o compared.html\n"
        "  drawwell report kitchen.h5 --log evening.csv\n"
        "      evening.csv: time_min,plate_temperature_c,outlet_gas_temperature_c\n");
    command->callback([options] { report(*options); });
}

}  // namespace drawwell

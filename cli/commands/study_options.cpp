#include "cli/commands/study_options.h"

#include <unistd.h>

#include <CLI/CLI.hpp>
#include <iostream>

#include "cli/commands/exit_codes.h"
#include "cli/commands/interrupt_watch.h"
#include "cli/commands/rows_progress.h"
#include "cli/commands/stove_request.h"
#include "cli/commands/watched_run.h"
#include "cli/report/file_name.h"
#include "cli/report/pending_file.h"
#include "solver/errors.h"

namespace drawwell {

void add_study_options(CLI::App& command, StudyOptions& options) {
    command.add_option("--set", options.sets, "replace what the file says; may be repeated")
        ->allow_extra_args(false)
        ->type_name("KEY=VALUE");
    command
        .add_option("--follow", options.follows,
                    "what follows from what changes: 'plate.underside = riser.top + 45mm'; every "
                    "height counts from the tunnel floor")
        ->allow_extra_args(false)
        ->type_name("KEY=FORMULA");
    command.add_option("--for", options.duration, "how long a burn, e.g. 6h")->type_name("TIME");
    command.add_option("--threads", options.threads, "how many at a time; default: all cores")
        ->type_name("N");
    command.add_flag("--quiet", options.quiet, "no table, no progress");
}

void add_grid_options(CLI::App& command, StudyOptions& options) {
    command
        .add_option("--vary", options.varies,
                    "what differs: riser.top=500mm:900mm:50mm (from, to, step), "
                    "riser.lining=board,bricks; several make a grid of all their combinations")
        ->allow_extra_args(false)
        ->type_name("KEY=VALUES");
    command.add_flag("--resume", options.resume,
                     "go on where a killed run of the same study stopped");
    command.add_flag("--force", options.force,
                     "begin anew over a study left unfinished; replace a file that is no result");
}

Study begin_study(const std::vector<std::string>& files, const StudyOptions& options) {
    Study study;
    for (const std::string& file : files) study.files.push_back(read_stove_text(file));
    for (const std::string& set : options.sets) study.sets.push_back(parse_override(set));
    if (!options.duration.empty())
        study.sets.push_back({"burn.duration", options.duration, "--for " + options.duration});
    for (const std::string& follow : options.follows) study.follows.push_back(parse_follow(follow));
    std::vector<std::string> varied;
    for (const Vary& vary : parse_varies(options.varies)) varied.push_back(vary.key);
    check_follows(study.follows, varied);
    return study;
}

std::filesystem::path journal_file(const std::filesystem::path& result) {
    return with_ending(behind_links(result), ".rows.jsonl");
}

std::unique_ptr<Journal> begin_journal(const std::filesystem::path& file, bool named,
                                       const StudyOptions& options) {
    try {
        check_writable(file);
    } catch (const FileError& error) {
        if (named || options.resume) throw;
        if (!options.quiet) std::cerr << error.what() << ": if this is stopped, nothing is kept\n";
        return std::make_unique<Journal>();
    }
    auto journal = std::make_unique<Journal>(file, options.force && !options.resume);
    if (journal->finished() > 0 && !options.resume)
        throw InputError("an unfinished study is in " + file.string() +
                         ": go on with --resume, or begin anew with --force");
    return journal;
}

std::vector<Row> compute_rows(const Study& study, const Library& library, Journal& journal,
                              const StudyOptions& options, RowsWatch watch) {
    const InterruptWatch interrupt;
    const Ranks* ranks = watch.ranks;
    RowsProgress progress(std::cerr, study.size(),
                          is_terminal(STDERR_FILENO) && (!ranks || ranks->count() == 1));
    watch.threads = options.threads;
    watch.stop = &interrupt.raised();
    if (!options.quiet && (!ranks || ranks->writer()))
        watch.progress = [&](std::size_t done) { progress.finished(done); };
    std::vector<Row> rows = run_rows(study, library, journal, watch);
    std::size_t done = 0;
    for (const Row& row : rows) done += row.done ? 1 : 0;
    if (done < rows.size())
        throw Interrupted("stopped after " + std::to_string(done) + " of " +
                          std::to_string(rows.size()) + " stoves; " +
                          (journal.keeps() ? "--resume goes on from there and repeats none of them"
                                           : "nothing of them is kept"));
    return rows;
}

}  // namespace drawwell

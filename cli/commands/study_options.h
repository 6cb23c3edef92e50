#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "cli/study/run_rows.h"

namespace CLI {
class App;
}

namespace drawwell {

/// What commands that compute many stoves have in common.
struct StudyOptions {
    std::vector<std::string> sets, varies, follows;
    std::string duration;
    unsigned threads = 0;
    bool resume = false, force = false, quiet = false;
};

/// Adds --set, --follow, --for, --threads and --quiet.
void add_study_options(CLI::App& command, StudyOptions& options);
/// Adds --vary, --resume and --force, of a study whose rows are kept.
void add_grid_options(CLI::App& command, StudyOptions& options);

/// The study that they ask for, of these files (- reads standard input), without variants.
/// FileError, InputError.
Study begin_study(const std::vector<std::string>& files, const StudyOptions& options);

/// The file of the journal of a study whose result has that name: `kitchen-compare.h5` keeps its
/// rows in `kitchen-compare.rows.jsonl`.
std::filesystem::path journal_file(const std::filesystem::path& result);

/// The journal itself. If the user has not `named` the result and its folder can't be
/// written, a remark says that nothing is kept. InputError: an unfinished one is there, and neither
/// --resume nor --force says what to do with it. FileError.
std::unique_ptr<Journal> begin_journal(const std::filesystem::path& file, bool named,
                                       const StudyOptions& options);

/// Computes the rows, telling how far it is and how long it will take, on the journal. Interrupted:
/// by Ctrl-C; the journal keeps what was finished. `watch`: with whom the rows are shared (those
/// who do not write get none), and what becomes of their series; the rest is set here.
std::vector<Row> compute_rows(const Study& study, const Library& library, Journal& journal,
                              const StudyOptions& options, RowsWatch watch = {});

}  // namespace drawwell

#pragma once

#include <atomic>
#include <cstddef>
#include <functional>
#include <string>
#include <vector>

#include "cli/read/over_time.h"
#include "cli/study/follow.h"
#include "cli/study/journal.h"
#include "cli/study/ranks.h"
#include "cli/study/row.h"
#include "cli/study/vary.h"
#include "models/library.h"

namespace drawwell {

/// A stove file's text, its name, and how to read what it names.
struct StoveText {
    std::string name;
    std::string text;
    FileReader read_file;
};

/// Stoves to be computed beside each other: each file in each variant, file by file, and each of
/// them on so many days and fires, one after the other.
struct Study {
    std::vector<StoveText> files;
    std::vector<Override> sets;     // in all of them
    std::vector<Variant> variants;  // at least one
    std::vector<Follow> follows;    // in the order in which they are worked out
    /// Days on which all that is uncertain is otherwise; 0: one, on which nothing is.
    std::size_t days = 0;
    std::uint64_t seed = 1;  // of the days

    std::size_t repeats() const { return days > 0 ? days : 1; }
    std::size_t stoves() const { return files.size() * variants.size(); }
    std::size_t size() const { return stoves() * repeats(); }
    // Of a stove, counted without days.
    const StoveText& file_of(std::size_t stove) const { return files[stove / variants.size()]; }
    const Variant& variant_of(std::size_t stove) const { return variants[stove % variants.size()]; }
};

/// Of each stove its file's name as result files tell it (see `told_names`).
std::vector<std::string> told_files(const Study& study);
/// A setting's value as result files tell it.
std::string told_setting(const std::string& key, const std::string& value);

/// A stove of the study. InputError: it can't be, with every reason.
Stove stove_of(const Study& study, std::size_t stove, const Library& library);

/// InputError: a formula of --follow names a figure that no stove of the study has, which each of
/// its rows would say anew. Stoves that can't be read are passed over.
void check_follows_of(const Study& study, const Library& library);

/// How rows are computed.
struct RowsWatch {
    unsigned threads = 0;                     // 0: as many as there are cores for it
    const std::atomic<bool>* stop = nullptr;  // set from outside: begin no more, end those at work
    /// Called with the number of rows finished, by whichever thread finished one; may be empty.
    std::function<void(std::size_t done)> progress;
    /// Rows bring their series, which the journal keeps.
    bool series = false;
    /// Called with each row that is finished, and its series, on any thread; may be empty.
    std::function<void(const Row& row)> finished = {};
    Ranks* ranks = nullptr;  // begun; with whom the rows are shared; null: with nobody
};

/// Computes every row that the journal does not hold, on several threads: row = stove x days + day.
/// A row that fails says why and the others go on; rows do not depend on threads or order.
/// Shared with other ranks, all rows come to the writer, whose journal alone is written, and the
/// others keep none. FileError: the journal can't be written.
std::vector<Row> run_rows(const Study& study, const Library& library, Journal& journal,
                          const RowsWatch& watch = {});

}  // namespace drawwell

#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <initializer_list>
#include <mutex>
#include <string>
#include <string_view>
#include <unordered_map>

#include "cli/report/descriptor.h"
#include "cli/study/row.h"
#include "solver/results.h"

namespace drawwell {

/// Rows of a study as they are finished, appended at once: what a killed run leaves behind, so that
/// it can go on. Rows are told by the stove they are of (`identity_of`), so order, timings and
/// provenance do not matter. The first line marks the file as drawwell's, then there is a line of
/// JSON a row, and before it, if the row came with its series, a line with their size and then
/// their bytes. While a run is at work the file is locked.
class Journal {
  public:
    /// Keeps nothing.
    Journal() = default;
    /// Goes on in the file if it is there, after reading its rows; what a kill cut short at its end
    /// is dropped. `anew`: drops all of it. Any other file is left as it is. FileError: it can't
    /// be read or written, is not drawwell's, or is damaged (but for `anew`). InputError: another
    /// run is at work on it, or (but for `anew`) a drawwell of another version began it.
    explicit Journal(std::filesystem::path file, bool anew = false);

    /// The row of that identity, if it was finished before. Null: it was not.
    const Row* find(const std::string& identity) const;
    /// The rows it began with, a line each; `learn` takes them in elsewhere. InputError: they are
    /// no such lines.
    std::string text() const;
    void learn(const std::string& lines);
    /// Forgets the others of those it began with, so that they are computed again.
    void keep_only(const std::function<bool(const Row& row)>& wanted);
    /// Adds a row, and its series if it has them. May be called by several threads. FileError: it
    /// could not be written, then neither can any later one.
    void add(const Row& row);
    /// Deletes the file: the study is done.
    void remove();

    /// Whether rows are kept at all.
    bool keeps() const { return !file_.empty(); }
    std::size_t finished() const { return rows_.size(); }

    /// Whether it keeps the series of that row.
    bool has_series_of(const std::string& identity) const;
    /// The series of that row. FileError: they are not there, or damaged.
    Results series_of(const std::string& identity) const;

  private:
    struct Place {
        std::uint64_t begin = 0, size = 0;  // [bytes]
    };

    void open();
    void read();
    [[noreturn]] void damaged(std::size_t line) const;
    void append(std::initializer_list<std::string_view> parts);
    bool is_at_its_name() const;

    std::filesystem::path file_;
    Descriptor open_;
    std::uint64_t end_ = 0;                          // [bytes] of what is whole
    int failed_ = 0;                                 // why it could not be written (`errno`)
    std::unordered_map<std::string, Row> rows_;      // read at first
    std::unordered_map<std::string, Place> series_;  // of all rows
    mutable std::mutex writing_;
};

/// Tells stoves apart that give other answers: the resolved text and the program's version.
std::string identity_of(const std::string& resolved);

}  // namespace drawwell

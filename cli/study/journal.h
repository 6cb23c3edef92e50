#pragma once

#include <filesystem>
#include <fstream>
#include <functional>
#include <mutex>
#include <string>
#include <unordered_map>

#include "cli/study/row.h"

namespace drawwell {

/// Rows of a study as they are finished, a line each, appended at once: what a killed run leaves
/// behind, so that it can go on. Rows are told by the stove they are of (`identity_of`), so order,
/// timings and provenance do not matter.
class Journal {
  public:
    /// Keeps nothing.
    Journal() = default;
    /// Goes on in the file if it is there, after reading its rows; a last line cut short is
    /// dropped. FileError: it can't be read or written, or holds something else.
    explicit Journal(std::filesystem::path file);

    /// The row of that identity, if it was finished before. Null: it was not.
    const Row* find(const std::string& identity) const;
    /// The rows it began with, a line each; `learn` takes them in elsewhere. InputError: they are
    /// no such lines.
    std::string text() const;
    void learn(const std::string& lines);
    /// Forgets the others of those it began with, so that they are computed again.
    void keep_only(const std::function<bool(const Row& row)>& wanted);
    /// Adds a row. May be called by several threads. FileError.
    void add(const Row& row);
    /// Deletes the file: the study is done.
    void remove();

    std::size_t finished() const { return rows_.size(); }

  private:
    std::filesystem::path file_;
    std::unordered_map<std::string, Row> rows_;  // read at first
    std::ofstream out_;
    std::mutex writing_;
};

/// Tells stoves apart that give other answers: the resolved text and the program's version.
std::string identity_of(const std::string& resolved);

}  // namespace drawwell

#pragma once

#include <filesystem>
#include <mutex>
#include <string>
#include <utility>

#include "solver/results.h"

namespace drawwell {

/// A burn's columns as bytes, to be handed on or kept, and back. FileError: they are something
/// else.
std::string series_bytes(const Results& results);
Results results_of(const std::string& bytes);

/// Keeps the series of rows in a folder, a file each, so that memory does not grow with them and a
/// killed run can go on. Rows are told as in the journal, by the stove they are of.
class SeriesStore {
  public:
    /// The folder is made at the first row.
    explicit SeriesStore(std::filesystem::path folder) : folder_(std::move(folder)) {}

    bool holds(const std::string& identity) const;
    /// May be called by several threads. FileError.
    void keep(const std::string& identity, const std::string& bytes);
    /// FileError: it is not there.
    Results read(const std::string& identity) const;
    /// Deletes them all: the study is done, or begins anew.
    void remove() const;

  private:
    std::filesystem::path folder_;
    std::mutex writing_;
};

}  // namespace drawwell

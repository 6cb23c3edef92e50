#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "cli/study/run_rows.h"

namespace drawwell {

/// A study as a table for a spreadsheet: a row a stove, in the study's order; what is set in it,
/// why it failed, every answer, the mark of a table. What never happened is empty.
std::string compare_csv(const Study& study, const std::vector<Row>& rows);

/// The same as JSON: `{"rows": [{"stove", "settings", "error", "answers"}],
/// "schema_version", "program_version"}`; null: it never happened.
std::string compare_json(const Study& study, const std::vector<Row>& rows);

/// The same as HDF5: a data set per answer over `row` (NaN: never happened; yes is 1, words are
/// text), and the settings and errors as text. The file replaces an earlier one only when it is
/// whole; equal studies give equal bytes. With `series`, the journal that keeps them, each
/// row's columns are a group, `series/ROW`. It is made in memory, which takes twice its size.
/// FileError.
void write_compare_hdf5(const std::filesystem::path& file, const Study& study,
                        const std::vector<Row>& rows, const Journal* series = nullptr);

}  // namespace drawwell

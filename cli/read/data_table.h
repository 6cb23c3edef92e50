#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "cli/read/raw_value.h"
#include "solver/table.h"

namespace drawwell {

class DataFile;

/// One row (a table `[name]`) of a file of data/. A key it lacks is taken from the row that it
/// names under `like`. Every reader throws InputError naming file, row and key if the value is
/// absent or out of range. Lives no longer than its file.
class DataTable {
  public:
    const std::string& name() const { return name_; }
    bool has(std::string_view key) const;
    std::string text(std::string_view key) const;                // not empty
    double positive(std::string_view key) const;                 // finite, above zero
    double share(std::string_view key) const;                    // 0..1
    double temperature(std::string_view key) const;              // degC in the file, K out
    std::vector<std::string> texts(std::string_view key) const;  // a list, not empty
    Table by_temperature(std::string_view key) const;  // pairs of degC (K out) and a positive value
    [[noreturn]] void fail(std::string_view key, std::string_view why) const;

  private:
    friend class DataFile;
    DataTable(const DataFile& file, std::string name) : file_(&file), name_(std::move(name)) {}
    const RawValue* find(std::string_view key) const;
    double number(std::string_view key) const;

    const DataFile* file_;
    std::string name_;
};

/// A parsed file of data/.
class DataFile {
  public:
    /// The text of a file; the name is for messages. InputError: not valid TOML, or a key outside
    /// a row, or a row that is `like` none, itself or another that is `like` a third.
    DataFile(std::string name, std::string_view text);

    const std::string& name() const { return name_; }
    std::vector<std::string> rows() const;       // in alphabetical order
    DataTable row(std::string_view name) const;  // InputError if there is none

  private:
    friend class DataTable;
    using Values = std::map<std::string, RawValue, std::less<>>;
    std::string name_;
    std::map<std::string, Values, std::less<>> rows_;
};

/// A file of data/ as compiled in. InputError: there is none of that name.
DataFile embedded_file(const std::string& name);

}  // namespace drawwell

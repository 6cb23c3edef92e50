#pragma once

#include <span>
#include <string>

#include "cli/read/read_library.h"
#include "cli/report/shown_unit.h"
#include "models/columns.h"
#include "models/library.h"

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell list keys|materials|build-ups|woods|columns|answers [WORD]`
void add_list_command(CLI::App& app);

/// The lists as text of at most 80 characters a line; `word` keeps only entries that contain it.
/// A word also brings each key's kind, units and range.
std::string list_keys(const std::string& word, UnitSystem system = UnitSystem::metric);
std::string list_materials(const Library& library, const std::string& word,
                           UnitSystem system = UnitSystem::metric);
std::string list_build_ups(std::span<const NamedBuildUp> build_ups, const std::string& word);
std::string list_woods(const Library& library, const std::string& word,
                       UnitSystem system = UnitSystem::metric);
std::string list_columns(std::span<const ColumnInfo> columns, const std::string& word);
std::string list_answers(const std::string& word);

}  // namespace drawwell

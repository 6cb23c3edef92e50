#pragma once

#include <span>
#include <string_view>

#include "cli/read/over_time.h"
#include "cli/read/overrides.h"
#include "cli/read/stove_draft.h"
#include "models/library.h"
#include "models/stove.h"

namespace drawwell {

/// Reads a stove file's text; `read_file` gives the text of a file that it names (site.weather), by
/// its path from the stove file. What the file leaves out is filled by each key's default.
///
/// InputError has one line for every problem found, `file:line:column: key = value: reason; did you
/// mean "..."?`, problems of an override beginning with `--set KEY=VALUE`. Only an error of TOML's
/// syntax comes alone, because nothing behind it can be read.
Stove read_stove(std::string_view text, std::string_view file_name,
                 std::span<const Override> overrides, const Library& library,
                 const FileReader& read_file = {});

/// The same without asking whether the parts fit each other: for a stove of which something is to
/// be set yet.
Stove read_unchecked(std::string_view text, std::string_view file_name,
                     std::span<const Override> overrides, const Library& library,
                     const FileReader& read_file = {});

/// What it says of its sheet ([sheet]), which the stove itself does not keep.
SheetNote read_sheet_note(std::string_view text, std::string_view file_name,
                          std::span<const Override> overrides, const Library& library,
                          const FileReader& read_file = {});

}  // namespace drawwell

#pragma once

#include <span>
#include <string>
#include <vector>

#include "cli/commands/targets.h"
#include "cli/read/overrides.h"
#include "cli/report/run_record.h"
#include "cli/study/run_rows.h"
#include "models/library.h"
#include "models/stove.h"

namespace CLI {
class App;
}

namespace drawwell {

/// Which stove a command is to compute, as told on the command line.
struct StoveRequest {
    std::string file;  // - reads standard input
    std::vector<std::string> sets;
};

/// A stove with what it was read from.
struct RequestedStove {
    StoveText file;
    std::vector<Input> inputs;  // files that were read
    Library library;
    Stove stove;
    RunRecord record;
};

/// Adds STOVE and --set, which fill `request`.
void add_stove_options(CLI::App& command, StoveRequest& request);

/// The text of a stove file (- reads standard input), and how to read what it names. FileError.
StoveText read_stove_text(const std::string& file);

/// The files of which a stove is made, for `check_outputs`: its own, and the weather that it or one
/// of the overrides names.
std::vector<Input> inputs_of(const std::string& file, const StoveText& stove,
                             std::span<const Override> overrides);

/// Reads the stove; `more` overrides beat --set. FileError, InputError.
RequestedStove read_requested(const StoveRequest& request, const std::vector<Override>& more = {});

}  // namespace drawwell

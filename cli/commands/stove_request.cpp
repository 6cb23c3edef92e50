#include "cli/commands/stove_request.h"

#include <CLI/CLI.hpp>

#include "cli/commands/read_text.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "cli/read/resolved_text.h"

namespace drawwell {

void add_stove_options(CLI::App& command, StoveRequest& request) {
    command.add_option("STOVE", request.file, "stove file; - reads standard input")->required();
    command
        .add_option("--set", request.sets,
                    "replace what the stove file says, e.g. --set 'flue.stack.length=3 m'; may be "
                    "repeated; `drawwell list keys` names all")
        ->allow_extra_args(false)
        ->type_name("KEY=VALUE");
}

RequestedStove read_requested(const StoveRequest& request, const std::vector<Override>& more) {
    std::vector<Override> overrides;
    for (const std::string& set : request.sets) overrides.push_back(parse_override(set));
    overrides.insert(overrides.end(), more.begin(), more.end());
    RequestedStove requested;
    RunRecord& record = requested.record;
    record.stove_name = request.file == "-" ? "standard input" : request.file;
    record.stove_text = read_text(request.file);
    requested.library = read_library();
    requested.stove =
        read_stove(record.stove_text, record.stove_name, overrides, requested.library);
    record.title = requested.stove.title;
    record.stove_resolved = resolved_text(requested.stove);
    for (const Override& set : overrides) record.overrides.push_back(set.key + "=" + set.value);
    return requested;
}

}  // namespace drawwell

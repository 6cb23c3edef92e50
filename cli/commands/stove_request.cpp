#include "cli/commands/stove_request.h"

#include <CLI/CLI.hpp>
#include <filesystem>

#include "cli/commands/read_text.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "cli/read/resolved_text.h"
#include "cli/report/pending_file.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view weather_key = "site.weather";  // the only one that names a file

/// Where files lie that a stove file names.
fs::path folder_of(const std::string& stove) {
    return stove == "-" ? fs::path() : fs::path(stove).parent_path();
}

/// Reads files that a stove file names, by their paths from its folder; one that can't be read is
/// for the user to mend there.
FileReader reader_beside(const std::string& stove) {
    const fs::path folder = folder_of(stove);
    return [folder](const std::string& name) {
        try {
            const fs::path file = folder / name;
            return read_text(file == "-" ? "./-" : file.string());  // not standard input
        } catch (const FileError& error) {
            throw InputError(error.what());
        }
    };
}

}  // namespace

void add_stove_options(CLI::App& command, StoveRequest& request) {
    command.add_option("STOVE", request.file, "stove file; - reads standard input")->required();
    command
        .add_option("--set", request.sets,
                    "replace what the stove file says, e.g. --set 'flue.stack.length=3 m'; may be "
                    "repeated; `drawwell list keys` names all")
        ->allow_extra_args(false)
        ->type_name("KEY=VALUE");
}

StoveText read_stove_text(const std::string& file) {
    return {file == "-" ? "standard input" : file, read_text(file), reader_beside(file)};
}

std::vector<Input> inputs_of(const std::string& file, const StoveText& stove,
                             std::span<const Override> overrides) {
    std::vector<Input> inputs{{"the stove file", file, FileKind::stove}};
    const auto add_weather = [&](const std::string& name) {
        inputs.push_back({"the file of its weather", folder_of(file) / name});
    };
    try {
        for (const Entry& entry : parse_raw(stove.text, stove.name).entries)
            if (entry.key == weather_key) add_weather(entry.value.text);
    } catch (const InputError&) {
        // A file that can't be read as a stove names none; whoever reads it says why.
    }
    for (const Override& each : overrides)
        if (each.key == weather_key) add_weather(each.value);
    return inputs;
}

RequestedStove read_requested(const StoveRequest& request, const std::vector<Override>& more) {
    std::vector<Override> overrides;
    for (const std::string& set : request.sets) overrides.push_back(parse_override(set));
    overrides.insert(overrides.end(), more.begin(), more.end());
    RequestedStove requested;
    RunRecord& record = requested.record;
    const StoveText& file = requested.file = read_stove_text(request.file);
    requested.inputs = inputs_of(request.file, file, overrides);
    record.stove_name = file.name;
    requested.library = read_library();
    std::vector<std::string> named;  // by the stove file or --set
    const FileReader read_file = [&](const std::string& name) {
        named.push_back(name);
        return file.read_file(name);
    };
    requested.stove = read_stove(file.text, file.name, overrides, requested.library, read_file);
    record.stove_text = told_text(file.text, named);
    record.title = requested.stove.title;
    record.stove_resolved = resolved_text(requested.stove);
    for (const Override& set : overrides)
        record.overrides.push_back(told_text(set.key + "=" + set.value, named));
    return requested;
}

}  // namespace drawwell

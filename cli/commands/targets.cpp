#include "cli/commands/targets.h"

#include <fmt/format.h>

#include <system_error>

#include "cli/report/file_name.h"
#include "cli/report/pending_file.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

bool is_option(const Output& output) {
    return output.option.starts_with('-');
}

/// What to do about an output, as the end of a message.
std::string way_out(const Output& output, bool by_force) {
    return fmt::format("name another{}{}", is_option(output) ? " with " + output.option : "",
                       by_force ? ", or replace it with --force" : "");
}

std::string named(const Output& output) {
    return fmt::format("{} ({})", output.option, output.file.string());
}

void check_apart(std::span<const Output> outputs, const NameJudge& one_name) {
    for (std::size_t i = 0; i < outputs.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
            if (same_file(outputs[k].file, outputs[i].file, one_name))
                throw InputError(fmt::format("{} and {} are one file: give each a name of its own",
                                             named(outputs[k]), named(outputs[i])));
}

void check_input(const Output& output, const Input& input, bool force, const NameJudge& one_name) {
    const fs::path source = input.file == "-" ? fs::path("/dev/stdin") : input.file;
    if (!same_file(output.file, source, one_name)) return;
    // Going on from a result, or matching a stove, may well mean to replace it.
    const bool by_force = output.kind == input.kind;
    if (force && by_force) return;
    throw InputError(fmt::format("{} would replace {}: {}", named(output), input.what,
                                 way_out(output, by_force)));
}

void check_target(const Output& output, bool force) {
    std::error_code ignored;
    const bool exists = fs::exists(output.file, ignored);
    if (exists && !fs::is_regular_file(output.file, ignored))
        throw FileError("cannot write " + output.file.string() + " (it is not a plain file)");
    if (exists && !force) {
        const FileKind found = kind_of_file(output.file);
        const std::string what =
            found == FileKind::other ? "" : fmt::format(", but {}", kind_in_words(found));
        if (output.kind == FileKind::stove)
            throw InputError(
                fmt::format("{} exists: {}", output.file.string(), way_out(output, true)));
        if (found != output.kind)
            throw InputError(fmt::format("{} exists and is not {} that drawwell wrote{}: {}",
                                         output.file.string(), kind_in_words(output.kind), what,
                                         way_out(output, true)));
    }
    check_writable(output.file);
}

}  // namespace

void check_outputs(std::span<const Output> outputs, std::span<const Input> inputs, bool force,
                   const NameJudge& one_name) {
    check_apart(outputs, one_name);
    for (const Output& output : outputs) {
        for (const Input& input : inputs) check_input(output, input, force, one_name);
        check_input(output, {"where standard output goes", "/dev/stdout"}, force, one_name);
    }
    for (const Output& output : outputs)
        if (output.kind != FileKind::journal) check_target(output, force);
}

fs::path result_target(const std::string& output, const std::string& stove,
                       const std::string& ending, const std::string& unnamed) {
    if (!output.empty()) return output;
    return stove == "-" ? fs::path(unnamed) : with_ending(fs::path(stove).filename(), ending);
}

fs::path table_target(const std::string& file, const fs::path& result) {
    return file.empty() ? with_ending(result, ".csv") : fs::path(file);
}

}  // namespace drawwell

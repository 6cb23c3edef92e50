#pragma once

#include <filesystem>
#include <span>
#include <string>

#include "cli/commands/same_file.h"
#include "cli/report/file_kind.h"

namespace drawwell {

/// A file that a command will write.
struct Output {
    std::string option;  // that names it, `--csv`, or what it is
    std::filesystem::path file;
    FileKind kind;  // of what it will hold
};

/// A file that a command reads.
struct Input {
    std::string what;            // "the stove file"
    std::filesystem::path file;  // - for standard input
    FileKind kind = FileKind::other;
};

/// Refuses, before a command computes anything, all that it could not or must not write: two
/// outputs that are one file; one that is an input or standard output (but what is of one kind with
/// the input may replace it by force); one that exists and does not hold what is to be written
/// there, unless forced; one that can't be written. Of a journal only the first two, it guards
/// itself. FileError, InputError.
void check_outputs(std::span<const Output> outputs, std::span<const Input> inputs, bool force,
                   const NameJudge& one_name = takes_for_one);

/// Where a result goes: `output` if given, else the stove file's name with `ending` ("-draw.svg"),
/// or `unnamed` if the stove came from standard input; both in the current folder.
std::filesystem::path result_target(const std::string& output, const std::string& stove,
                                    const std::string& ending, const std::string& unnamed);

/// Where the table beside a result goes: `file` if given, else the result's name with .csv.
std::filesystem::path table_target(const std::string& file, const std::filesystem::path& result);

}  // namespace drawwell

#pragma once

#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <string>

#include "tests/cli/scratch_folder.h"

namespace drawwell {

/// What a run of the program left behind.
struct ProgramRun {
    int code = -1;
    std::string out, err;
};

/// Runs the real program in a folder; `arguments` as typed in a shell, where $drawwell is the
/// program and $sources this repository. `command` may wrap it.
inline ProgramRun run_program(const ScratchFolder& folder, const std::string& arguments,
                              const std::string& command = "$drawwell") {
    setenv("drawwell", DRAWWELL_PROGRAM, 1);
    setenv("sources", DRAWWELL_SOURCES, 1);
    const std::string line =
        "cd '" + (folder / "").string() + "' && " + command + " " + arguments + " >.out 2>.err";
    const int status = std::system(line.c_str());
    ProgramRun run;
    run.code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    run.out = bytes_of(folder / ".out");
    run.err = bytes_of(folder / ".err");
    std::filesystem::remove(folder / ".out");
    std::filesystem::remove(folder / ".err");
    return run;
}

}  // namespace drawwell

#pragma once

#include <filesystem>
#include <string>

#include "cli/report/descriptor.h"

namespace drawwell {

/// A folder of this run's own for what it needs only meanwhile, under a name that nobody guesses. A
/// mark in it tells what of its content is drawwell's, and is locked as long as the run lives: a
/// mark that nobody locks is of a run that was killed.
class RunFolder {
  public:
    /// Makes one in the folder for temporary files, after clearing away what killed runs left
    /// there. FileError.
    RunFolder();
    /// Removes what was put there by its name, then the folder, should it be empty.
    ~RunFolder();
    RunFolder(const RunFolder&) = delete;
    RunFolder& operator=(const RunFolder&) = delete;

    /// Where to put a file, or a folder, of that name. FileError.
    std::filesystem::path place(const std::string& name);

  private:
    std::filesystem::path folder_;
    Descriptor mark_;
};

/// Clears away what killed runs left in a folder; what a mark does not prove to be theirs stays.
void clear_run_folders(const std::filesystem::path& parent);

}  // namespace drawwell

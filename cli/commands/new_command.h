#pragma once

#include <string>

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell new [FILE] [--bore 125mm] [--drum 60l] [--force]`
void add_new_command(CLI::App& app);

/// What `new` was asked for; empty: not given.
struct NewRequest {
    std::string file;  // empty: standard output
    std::string bore, drum;
    bool force = false;
};

/// Writes the starting file and returns what to print: where it is, or the text itself if no file
/// is named. InputError: sizes it can't serve, or a file that exists without force. FileError.
std::string run_new(const NewRequest& request);

}  // namespace drawwell

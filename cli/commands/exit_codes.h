#pragma once

#include <stdexcept>

namespace drawwell {

/// How the program ends; told in --help.
enum ExitCode : int {
    exit_success = 0,
    exit_input = 2,          // stove file or command line: for the user to mend
    exit_solver = 3,         // the calculation failed: for us to mend
    exit_file = 4,           // a file could not be read or written
    exit_interrupted = 130,  // Ctrl-C, as shells number it
};

/// The user stopped the program; the message says what was saved.
class Interrupted : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

}  // namespace drawwell

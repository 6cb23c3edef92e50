#pragma once

#include <exception>
#include <string>
#include <vector>

#include "solver/errors.h"

namespace drawwell {

/// Several things to mend, each a line of its text and harmless on a terminal.
class SeveralProblems : public InputError {
  public:
    explicit SeveralProblems(const std::vector<std::string>& lines);
    /// Once more what `error_text` gave.
    explicit SeveralProblems(const std::string& text) : InputError(text) {}
};

/// What an error says, harmless on a terminal: one line, of `SeveralProblems` several.
std::string error_text(const std::exception& error);

}  // namespace drawwell

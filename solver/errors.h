#pragma once

#include <stdexcept>
#include <string>

namespace drawwell {

/// Something the user can mend; the message says what, why, and what would be right.
class InputError : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// Something we must mend: the message names time, step and the worst state.
class SolverError : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

}  // namespace drawwell

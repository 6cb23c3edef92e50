#pragma once

#include <string>

#include "cli/study/answers.h"

namespace drawwell {

/// What became of one variant.
struct Row {
    std::string identity;  // of its stove; empty: it could not be read
    std::string error;     // why it has no answers; empty: it has
    Answers answers;
    bool done = false;   // false: stopped before it was its turn
    std::string series;  // bytes of its columns, until they are kept
};

}  // namespace drawwell

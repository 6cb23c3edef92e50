#pragma once

#include <string>
#include <utility>
#include <vector>

#include "cli/study/row.h"

namespace drawwell::tests {

/// A row that was computed and has one answer.
inline Row row_with(const std::string& answer, double value) {
    Row row;
    row.done = true;
    row.answers = Answers(std::vector<std::pair<std::string, Answer>>{{answer, value}});
    return row;
}

/// A row whose stove can't be.
inline Row failed_row() {
    Row row;
    row.done = true;
    row.error = "can't be";
    return row;
}

}  // namespace drawwell::tests

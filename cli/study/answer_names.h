#pragma once

#include <string>
#include <vector>

#include "cli/study/run_rows.h"

namespace drawwell {

/// Keys that differ from row to row, in the order in which they are first set.
std::vector<std::string> varied_keys(const Study& study);

/// What a row sets a key to; empty: it stays as filed.
std::string setting_of(const Study& study, std::size_t row, const std::string& key);

/// Names of all answers that any row has, in the order in which they first come.
std::vector<std::string> answer_names(const std::vector<Row>& rows);

}  // namespace drawwell

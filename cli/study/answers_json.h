#pragma once

#include <nlohmann/json_fwd.hpp>

#include "cli/study/answers.h"

namespace drawwell {

/// Answers as a JSON object by their names; null: it never happened.
nlohmann::ordered_json answers_json(const Answers& answers);

}  // namespace drawwell

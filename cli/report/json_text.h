#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

namespace drawwell {

/// JSON as it is printed, indented by two, with a line break at its end. Bytes that are no UTF-8
/// stand as U+FFFD; what a terminal would obey rather than show is escaped as \\uNNNN.
std::string json_text(const nlohmann::ordered_json& json);

}  // namespace drawwell

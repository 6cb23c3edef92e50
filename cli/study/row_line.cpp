#include "cli/study/row_line.h"

#include <nlohmann/json.hpp>
#include <utility>

#include "cli/study/answers_json.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

using Json = nlohmann::ordered_json;

Row from_json(const Json& line) {
    Row row;
    row.identity = line.at("id").get<std::string>();
    row.done = true;
    if (line.contains("error")) {
        row.error = line["error"].get<std::string>();
        return row;
    }
    std::vector<std::pair<std::string, Answer>> all;
    for (const auto& [key, value] : line.at("answers").items()) {
        Answer answer;
        if (value.is_boolean()) answer = value.get<bool>();
        if (value.is_number()) answer = value.get<double>();
        if (value.is_string()) answer = value.get<std::string>();
        all.emplace_back(key, std::move(answer));
    }
    row.answers = Answers(std::move(all));
    return row;
}

}  // namespace

std::string line_of(const Row& row) {
    Json line;
    line["id"] = row.identity;
    if (row.error.empty())
        line["answers"] = answers_json(row.answers);
    else
        line["error"] = row.error;
    return line.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Row row_of(const std::string& line) {
    try {
        return from_json(Json::parse(line));
    } catch (const Json::exception&) {
        throw InputError("no row of a study: " + line);
    }
}

}  // namespace drawwell

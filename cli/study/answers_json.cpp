#include "cli/study/answers_json.h"

#include <nlohmann/json.hpp>
#include <type_traits>

namespace drawwell {

nlohmann::ordered_json answers_json(const Answers& answers) {
    nlohmann::ordered_json json = nlohmann::ordered_json::object();
    for (const auto& [name, answer] : answers.all())
        std::visit(
            [&json, &name = name](const auto& value) {
                if constexpr (std::is_same_v<std::decay_t<decltype(value)>, std::monostate>)
                    json[name] = nullptr;
                else
                    json[name] = value;
            },
            answer);
    return json;
}

}  // namespace drawwell

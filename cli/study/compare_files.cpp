#include "cli/study/compare_files.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>
#include <type_traits>

#include "cli/report/csv_cell.h"
#include "cli/report/file_kind.h"
#include "cli/report/json_text.h"
#include "cli/report/run_record.h"
#include "cli/report/schema_versions.h"
#include "cli/study/answer_names.h"
#include "cli/study/answers_json.h"

namespace drawwell {
namespace {

using Json = nlohmann::ordered_json;

std::string csv_of(const Answer* answer) {
    if (!answer) return "";
    return std::visit(
        [](const auto& value) -> std::string {
            using T = std::decay_t<decltype(value)>;
            if constexpr (std::is_same_v<T, std::monostate>)
                return "";
            else if constexpr (std::is_same_v<T, bool>)
                return value ? "1" : "0";
            else if constexpr (std::is_same_v<T, double>)
                return fmt::format("{:.10g}", value);
            else
                return csv_cell(value);
        },
        *answer);
}

}  // namespace

std::string compare_csv(const Study& study, const std::vector<Row>& rows) {
    const std::vector<std::string> keys = varied_keys(study), answers = answer_names(rows);
    fmt::memory_buffer text;
    const auto out = std::back_inserter(text);
    fmt::format_to(out, "stove");
    for (const std::string& key : keys) fmt::format_to(out, ",{}", csv_cell(key));
    fmt::format_to(out, ",error");
    for (const std::string& name : answers) fmt::format_to(out, ",{}", csv_cell(name));
    fmt::format_to(out, ",{}\n", table_mark);
    const std::string mark = table_mark_of(FileKind::compare_table);
    const std::vector<std::string> stoves = told_files(study);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        fmt::format_to(out, "{}", csv_cell(stoves[i]));
        for (const std::string& key : keys)
            fmt::format_to(out, ",{}", csv_cell(told_setting(key, setting_of(study, i, key))));
        fmt::format_to(out, ",{}", csv_cell(told_text(rows[i].error, {study.file_of(i).name})));
        for (const std::string& name : answers)
            fmt::format_to(out, ",{}", csv_of(rows[i].answers.find(name)));
        fmt::format_to(out, ",{}\n", mark);
    }
    return fmt::to_string(text);
}

std::string compare_json(const Study& study, const std::vector<Row>& rows) {
    Json all = Json::array();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        Json row;
        row["stove"] = study.file_of(i).name;
        row["settings"] = Json::object();
        for (const Override& set : study.variant_of(i).settings)
            row["settings"][set.key] = set.value;
        row["error"] = rows[i].error.empty() ? Json() : Json(rows[i].error);
        row["answers"] = answers_json(rows[i].answers);
        all.push_back(std::move(row));
    }
    Json whole;
    whole["rows"] = std::move(all);
    whole["schema_version"] = json_schema_version;
    whole["program_version"] = DRAWWELL_VERSION;
    return json_text(whole);
}

}  // namespace drawwell

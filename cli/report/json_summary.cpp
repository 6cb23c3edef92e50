#include "cli/report/json_summary.h"

#include <nlohmann/json.hpp>
#include <type_traits>

#include "cli/report/fitting_text.h"
#include "cli/report/json_text.h"
#include "cli/report/schema_versions.h"
#include "cli/report/stretched_text.h"
#include "cli/report/summary_entries.h"

namespace drawwell {
namespace {

nlohmann::ordered_json to_json(const SummaryEntry& entry) {
    return std::visit(
        [](const auto& value) -> nlohmann::ordered_json {
            using T = std::decay_t<decltype(value)>;
            if constexpr (std::is_same_v<T, std::monostate>)
                return nullptr;
            else if constexpr (std::is_same_v<T, std::string_view>)
                return std::string(value);
            else
                return value;  // what is not finite comes out as null as well
        },
        entry.value);
}

/// Values in the law's own unit: kelvin, not Celsius; an end that is open is null.
nlohmann::ordered_json to_json(const Stretched& stretched) {
    nlohmann::ordered_json json;
    json["law"] = stretched.law;
    json["where"] = stretched.where;
    json["what"] = stretched.what;
    json["unit"] = stretched.unit;
    json["low"] = stretched.low;
    json["high"] = stretched.high;
    json["worst"] = stretched.worst;
    json["share_of_burn"] = stretched.share_of_burn;
    json["weight"] = stretched.weight;
    json["effect"] = effect_name(stretched.effect);
    json["on"] = stretched.on;
    return json;
}

}  // namespace

std::string json_summary(const Summary& summary, const RunRecord& record,
                         const std::filesystem::path& result_file) {
    nlohmann::ordered_json json;
    for (const SummaryEntry& entry : summary_entries(summary))
        json[std::string(entry.key)] = to_json(entry);
    for (const FittingAnswer& answer : summary.fittings) {
        const auto [key, value] = fitting_figure(answer);
        auto& place = json["fittings"][answer.fitting][key];
        if (answer.value) place = value;
    }
    json["remarks"] = summary.remarks;
    json["stretched"] = nlohmann::ordered_json::array();
    for (const Stretched& stretched : summary.stretched)
        json["stretched"].push_back(to_json(stretched));
    json["title"] = record.title;
    json["stove"] = record.stove_name;
    json["overrides"] = record.overrides;
    if (record.started_from.empty())
        json["started_from"] = nullptr;
    else
        json["started_from"] = record.started_from;
    json["complete"] = record.complete;
    json["schema_version"] = json_schema_version;
    json["program_version"] = DRAWWELL_VERSION;
    if (result_file.empty())
        json["result_file"] = nullptr;
    else
        json["result_file"] = result_file.string();
    return json_text(json);
}

}  // namespace drawwell

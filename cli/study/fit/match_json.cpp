#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/report/json_text.h"
#include "cli/report/schema_versions.h"
#include "cli/study/fit/match_page.h"

namespace drawwell {
namespace {

using Json = nlohmann::ordered_json;

Json input_json(const MatchedInput& each) {
    const auto at = [&](double by) { return each.input.value(by); };
    return {{"name", each.input.name},
            {"prior", at(0)},
            {"prior_low", at(-half_interval)},
            {"prior_high", at(half_interval)},
            {"estimate", at(each.estimate)},
            {"low", at(each.estimate - half_interval * each.deviation)},
            {"high", at(each.estimate + half_interval * each.deviation)},
            {"deviations", each.estimate},
            {"left", each.deviation},
            {"told", each.told}};
}

Json sensor_json(const MatchedSensor& each) {
    Json json{{"header", each.sensor.header},
              {"column", each.sensor.what()},
              {"unit", each.sensor.unit},
              {"readings", each.time.size()},
              {"noise", each.sensor.noise.reading},
              {"noise_counted", each.counted},
              {"rms", each.rms},
              {"common_deviations", each.common_estimate},
              {"noise_source", each.sensor.noise.source}};
    if (each.sensor.bead)
        json["bead"] = {{"diameter_m", each.sensor.bead->diameter},
                        {"emissivity", each.sensor.bead->emissivity},
                        {"shielded", each.sensor.bead->shielded}};
    return json;
}

}  // namespace

std::string match_json(const Match& match, const std::string& log) {
    Json json;
    json["log"] = log;
    json["burns"] = match.burns;
    json["settled"] = match.settled;
    json["inputs"] = Json::array();
    for (const MatchedInput& each : match.inputs) json["inputs"].push_back(input_json(each));
    json["correlation"] = match.correlation;
    json["sensors"] = Json::array();
    for (const MatchedSensor& each : match.sensors) json["sensors"].push_back(sensor_json(each));
    json["not_told_apart"] = Json::array();
    for (const Blurred& each : match.blurred)
        json["not_told_apart"].push_back({{"shares", each.share}, {"left", each.deviation}});
    json["next"] = Json::array();
    for (const NextMeasurement& each : match.next)
        json["next"].push_back({{"column", each.sensor.what()},
                                {"narrows", each.gain},
                                {"most", match.inputs[each.most].input.name},
                                {"from", each.from},
                                {"to", each.to}});
    json["hardly_moves_the_log"] = match.rest;
    json["schema_version"] = json_schema_version;
    json["program_version"] = DRAWWELL_VERSION;
    return json_text(json);
}

}  // namespace drawwell

#include "cli/report/draw_json.h"

#include <nlohmann/json.hpp>
#include <optional>

#include "cli/report/draw_answers.h"
#include "cli/report/json_text.h"
#include "cli/report/schema_versions.h"

namespace drawwell {
namespace {

using Json = nlohmann::ordered_json;

// What is not finite comes out as null as well.
Json to_json(std::optional<double> value) {
    if (!value) return nullptr;
    return *value;
}

Json to_json(const DrawPoint& point) {
    return {{"flow_kg_s", point.flow}, {"push_pa", point.pressure}};
}

Json to_json(const std::optional<DrawPoint>& point) {
    if (!point) return nullptr;
    return to_json(*point);
}

Json to_json(const DrawCurve& curve) {
    const Directions directions = directions_of(curve);
    Json json;
    json["inward_stays"] = directions.inward;
    json["outward_stays"] = directions.outward;
    json["pull_back_pa"] = to_json(directions.pull_back);
    json["fold"] = to_json(curve.fold);
    json["spill"] = to_json(curve.spill);
    json["states"] = Json::array();
    for (const DrawState& state : curve.states)
        json["states"].push_back({{"flow_kg_s", state.flow}, {"stable", state.stable}});
    json["points"] = Json::array();
    for (const DrawPoint& point : curve.points) json["points"].push_back(to_json(point));
    return json;
}

Json to_json(const Trickle& trickle, std::optional<double> flow) {
    Json json;
    json["flow_kg_s"] = to_json(flow);
    switch (trickle.when) {
        case Trickle::When::never:
            json["when"] = "never";
            break;
        case Trickle::When::after_turning:
            json["when"] = "after_turning";
            break;
        case Trickle::When::at_push:
            json["when"] = "at_push";
            break;
        case Trickle::When::already:
            json["when"] = "already";
            break;
    }
    json["push_pa"] = trickle.when == Trickle::When::at_push ? Json(trickle.push) : Json(nullptr);
    return json;
}

Json to_json(DrawLimit limit) {
    switch (limit) {
        case DrawLimit::short_push:
            return "short_push";
        case DrawLimit::lasting_push:
            return "lasting_push";
        case DrawLimit::trickle:
            return "trickle";
        case DrawLimit::none:
            break;
    }
    return nullptr;
}

}  // namespace

std::string draw_json(const DrawStudy& study, const RunRecord& record,
                      const std::filesystem::path& figure) {
    const DrawAnswers answers = draw_answers(study);
    Json json;
    json["time_s"] = study.time;
    json["flow_kg_s"] = study.flow;
    json["given_off_kg_s"] = study.given_off;
    json["short_push_pa"] = to_json(answers.short_push);
    json["lasting_push_pa"] = to_json(answers.lasting_push);
    json["trickle_early"] = to_json(answers.trickle_early, study.exchange_early);
    json["trickle_late"] = to_json(answers.trickle_late, study.exchange_late);
    json["decides"] = to_json(answers.limit);
    json["decides_pa"] =
        answers.limit == DrawLimit::none ? Json(nullptr) : Json(answers.limit_push);
    json["walls_held"] = to_json(study.held);
    json["walls_following"] = to_json(study.following);
    json["title"] = record.title;
    json["stove"] = record.stove_name;
    json["overrides"] = record.overrides;
    json["schema_version"] = json_schema_version;
    json["program_version"] = DRAWWELL_VERSION;
    json["figure"] = figure.empty() ? Json(nullptr) : Json(figure.string());
    // Bytes that are not UTF-8 (a file name may hold any) must not stop the answer.
    return json_text(json);
}

}  // namespace drawwell

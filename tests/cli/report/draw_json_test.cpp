#include "cli/report/draw_json.h"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "cli/report/schema_versions.h"
#include "tests/cli/report/sample_draw.h"

using namespace drawwell;

TEST_SUITE("cli/report/draw_json") {
    TEST_CASE("programs get the answers, both curves and where they came from") {
        RunRecord record;
        record.title = "test stove";
        record.overrides = {"riser.top=700 mm"};
        const DrawStudy study = sample_draw();
        const auto json = nlohmann::json::parse(draw_json(study, record, "test-draw.svg"));
        CHECK(json["schema_version"] == json_schema_version);
        CHECK(json["time_s"] == 3600);
        CHECK(json["flow_kg_s"] == study.flow);
        CHECK(json["short_push_pa"] == study.held.fold->pressure);
        CHECK(json["lasting_push_pa"] == study.following.fold->pressure);
        CHECK(json["decides"] == "lasting_push");
        CHECK(json["decides_pa"] == study.following.fold->pressure);
        CHECK(json["trickle_early"]["when"] == "at_push");
        CHECK(json["trickle_early"]["push_pa"] > 0);
        CHECK(json["trickle_late"]["when"] == "after_turning");
        CHECK(json["walls_held"]["points"].size() == study.held.points.size());
        CHECK(json["walls_following"]["points"][0]["push_pa"] ==
              study.following.points[0].pressure);
        CHECK(json["walls_held"]["states"][1]["stable"] == false);
        CHECK(json["walls_held"]["spill"]["flow_kg_s"] == 0);
        CHECK(json["walls_held"]["pull_back_pa"] > 0);
        CHECK(json["overrides"][0] == "riser.top=700 mm");
        CHECK(json["figure"] == "test-draw.svg");
    }

    TEST_CASE("what there is not is null") {
        const auto json = nlohmann::json::parse(draw_json({}, {}));
        for (const char* key :
             {"short_push_pa", "lasting_push_pa", "decides", "decides_pa", "figure"}) {
            CAPTURE(key);
            CHECK(json.at(key).is_null());
        }
        CHECK(json["walls_held"]["fold"].is_null());
        CHECK(json["walls_held"]["points"].empty());
        CHECK(json["trickle_early"]["when"] == "never");
        CHECK(json["trickle_early"]["flow_kg_s"].is_null());
    }
}

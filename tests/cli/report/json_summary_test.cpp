#include "cli/report/json_summary.h"

#include <doctest/doctest.h>

#include <limits>
#include <nlohmann/json.hpp>

#include "tests/cli/report/sample_run.h"

using namespace drawwell;

TEST_SUITE("cli/report/json_summary") {
    TEST_CASE("the promised keys are there, in the units of their names") {
        const auto json = nlohmann::json::parse(json_summary(sample_summary(), sample_record()));
        for (const char* key : {"draws",
                                "reserve_draw_min_pa",
                                "reserve_draw_min_time_s",
                                "feed_suction_min_pa",
                                "smoke_back_s",
                                "air_ratio_mean",
                                "plate_centre_max_c",
                                "plate_rim_max_c",
                                "plate_time_to_175c_s",
                                "plate_minutes_warm",
                                "plate_minutes_simmer",
                                "plate_minutes_fry",
                                "plate_minutes_sear",
                                "plate_pot_minutes_fry",
                                "plate_bow_low_m",
                                "plate_bow_high_m",
                                "plate_bow_time_s",
                                "barrel_top_max_c",
                                "barrel_foot_max_c",
                                "riser_gas_max_c",
                                "exit_gas_max_c",
                                "heat_released_mj",
                                "heat_to_room_mj",
                                "heat_stored_mj",
                                "heat_up_flue_mj",
                                "energy_residual",
                                "mass_residual",
                                "steps",
                                "rhs_evaluations",
                                "wall_clock_s"}) {
            CAPTURE(key);
            REQUIRE(json.contains(key));
            CHECK_FALSE(json[key].is_null());
        }
        CHECK(json["draws"] == true);
        CHECK(json["plate_centre_max_c"].get<double>() == doctest::Approx(470));
        CHECK(json["plate_minutes_fry"].get<double>() == doctest::Approx(8));
        CHECK(json["plate_bow_high_m"].get<double>() == doctest::Approx(-0.0072));
        CHECK(json["heat_released_mj"].get<double>() == doctest::Approx(52));
        CHECK(json["steps"] == 1234);
        CHECK(json["complete"] == true);
    }

    TEST_CASE("what never happened and what the stove lacks is null") {
        Summary summary;
        summary.energy_residual = std::numeric_limits<double>::quiet_NaN();
        const auto json = nlohmann::json::parse(json_summary(summary, RunRecord{}));
        for (const char* key :
             {"reserve_draw_min_pa", "plate_time_to_175c_s", "plate_centre_max_c",
              "plate_minutes_fry", "barrel_top_max_c", "energy_residual", "result_file"}) {
            CAPTURE(key);
            REQUIRE(json.contains(key));
            CHECK(json[key].is_null());
        }
        CHECK(json["draws"].is_null());
        summary.draws = false;
        CHECK(nlohmann::json::parse(json_summary(summary, RunRecord{}))["draws"] == false);
    }

    TEST_CASE("stretched laws are a list, an open end is null") {
        Summary summary = sample_summary();
        CHECK(nlohmann::json::parse(json_summary(summary, RunRecord{}))["stretched"].empty());
        summary.stretched = {{.law = "bends",
                              .where = "",
                              .what = "Reynolds number",
                              .unit = "",
                              .low = 2e5,
                              .high = std::numeric_limits<double>::infinity(),
                              .worst = 7600,
                              .share_of_burn = 1,
                              .weight = 0.07,
                              .effect = Effect::judge_with_care,
                              .on = "draw"}};
        const auto json = nlohmann::json::parse(json_summary(summary, RunRecord{}));
        REQUIRE(json["stretched"].size() == 1);
        const auto& bends = json["stretched"][0];
        CHECK(bends["law"] == "bends");
        CHECK(bends["low"] == 2e5);
        CHECK(bends["high"].is_null());
        CHECK(bends["worst"] == 7600);
        CHECK(bends["effect"] == "judge with care");
        CHECK(bends["on"] == "draw");
    }

    TEST_CASE("bytes of a name that are not text do not stop the answer") {
        RunRecord record = sample_record();
        record.stove_name = "caf\xe9.toml";
        CHECK(nlohmann::json::accept(json_summary(sample_summary(), record, "caf\xe9.h5")));
    }
}

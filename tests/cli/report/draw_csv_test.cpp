#include "cli/report/draw_csv.h"

#include <doctest/doctest.h>

#include <limits>

using namespace drawwell;

TEST_SUITE("cli/report/draw_csv") {
    TEST_CASE("each flow is one row, and what a curve does not have is left empty") {
        DrawStudy study;
        study.held.points = {{-0.001, 5}, {0.001, 2.5}};
        study.following.points = {{-0.001, 4}, {0, std::numeric_limits<double>::quiet_NaN()}};
        CHECK(draw_csv(study) ==
              "flow_kg_s,push_held_pa,push_following_pa,drawwell_table\n-0.001,5,4,draw 1\n"
              "0,,,draw 1\n0.001,2.5,,draw 1\n");
    }
}

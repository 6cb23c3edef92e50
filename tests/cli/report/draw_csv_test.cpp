#include "cli/report/draw_csv.h"

#include <doctest/doctest.h>

#include <limits>

#include "cli/report/pending_file.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

TEST_SUITE("cli/report/draw_csv") {
    TEST_CASE("each flow is one row, and what a curve does not have is left empty") {
        DrawStudy study;
        study.held.points = {{-0.001, 5}, {0.001, 2.5}};
        study.following.points = {{-0.001, 4}, {0, std::numeric_limits<double>::quiet_NaN()}};
        CHECK(draw_csv(study) ==
              "flow_kg_s,push_held_pa,push_following_pa\n-0.001,5,4\n0,,\n0.001,2.5,\n");
    }

    TEST_CASE("only tables of a draw are taken for one") {
        const ScratchFolder folder;
        write_whole(folder / "a.csv", draw_csv({}));
        CHECK(is_draw_csv(folder / "a.csv"));
        put(folder / "b.csv", "flow_kg_s,mine\n");
        CHECK_FALSE(is_draw_csv(folder / "b.csv"));
        CHECK_FALSE(is_draw_csv(folder / "absent.csv"));
    }
}

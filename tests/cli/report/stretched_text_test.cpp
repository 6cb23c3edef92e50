#include "cli/report/stretched_text.h"

#include <doctest/doctest.h>

#include <limits>

using namespace drawwell;

namespace {

Stretched lining() {
    return {.law = "aes_board",
            .where = "riser lining",
            .what = "service temperature",
            .unit = "K",
            .low = 0,
            .high = 1273.15,
            .worst = 1403.15,
            .share_of_burn = 0.124,
            .weight = 0.124,
            .effect = Effect::judge_with_care,
            .on = "what wears out"};
}

Stretched bends() {
    return {.law = "bends",
            .where = "",
            .what = "Reynolds number",
            .unit = "",
            .low = 2e5,
            .high = std::numeric_limits<double>::infinity(),
            .worst = 7618.7,
            .share_of_burn = 1,
            .weight = 0.03,
            .effect = Effect::small,
            .on = "draw"};
}

}  // namespace

TEST_SUITE("cli/report/stretched_text") {
    TEST_CASE("a lining is told by its part, how hot it gets and what its material is good for") {
        CHECK(stretched_text(lining()) ==
              "riser lining up to 1130 °C; aes_board is sold to 1000 °C (12 % of the time)");
        Stretched tabled = lining();
        tabled.what = "tabled temperature";
        CHECK(stretched_text(tabled) ==
              "riser lining up to 1130 °C; aes_board is tabled to 1000 °C (12 % of the time)");
    }

    TEST_CASE("a law is told by the answer it bears on and where it is known") {
        CHECK(stretched_text(bends()) ==
              "draw: bends, used for gas that runs slower or narrower (Reynolds number 7620, known "
              "from 200000 up; 100 % of the time)");
        Stretched none = bends();
        none.on.clear();
        none.high = 3e6;
        none.worst = 4.4e6;
        CHECK(stretched_text(none) ==
              "bends, used for gas that runs faster or wider (Reynolds number 4e+06, known from "
              "200000 to 3e+06; 100 % of the time)");
    }

    TEST_CASE("what has no effect is not said, small effects share a line") {
        Summary summary;
        CHECK(stretched_points(summary).empty());
        summary.stretched = {bends()};
        summary.stretched[0].effect = Effect::nothing;
        CHECK(stretched_points(summary).empty());
        Stretched turn = bends();
        turn.law = "turn under the plate";
        summary.stretched = {lining(), bends(), turn, turn};
        const auto points = stretched_points(summary);
        REQUIRE(points.size() == 2);
        CHECK(points[0] == stretched_text(lining()));
        CHECK(points[1] ==
              "beyond what they are known for, to small effect: bends, turn under the plate");
    }
}

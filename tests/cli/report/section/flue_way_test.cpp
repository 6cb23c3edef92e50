#include "cli/report/section/flue_way.h"

#include <doctest/doctest.h>

#include "tests/cli/report/sheet/sheet_stoves.h"

using namespace drawwell;
using namespace drawwell::tests;

TEST_SUITE("cli/report/section/flue_way") {
    TEST_CASE("the pieces hang together and are as long and as high as the file says") {
        for (const char* name : {"workshop", "workshop-bench", "workshop-level-run"}) {
            CAPTURE(name);
            const Stove stove = sample_stove(name);
            const FlueWay way = flue_way(stove);
            REQUIRE(way.runs.size() == stove.flue.sections.size());
            double rise = way.outlet.y, start = 0;
            for (std::size_t i = 0; i < way.runs.size(); ++i) {
                const FlueRun& run = way.runs[i];
                const FlueSection& section = stove.flue.sections[i];
                CHECK(run.length == section.length);
                CHECK(run.start == doctest::Approx(start));
                CHECK(run.end().y - run.from.y == doctest::Approx(section.rise));
                if (i > 0) CHECK(run.from.x == doctest::Approx(way.runs[i - 1].end().x));
                rise += section.rise;
                start += section.length;
            }
            CHECK(way.runs.back().end().y == doctest::Approx(rise));
        }
    }

    TEST_CASE("an upright flue stands clear of barrel and plate") {
        const Stove stove = sample_stove("workshop");
        const FlueWay way = flue_way(stove);
        const double plate = stove.tunnel->length + stove.plate->diameter / 2;
        const double barrel = stove.tunnel->length + stove.barrel->diameter / 2;
        for (const FlueRun& run : way.runs)
            if (run.along.y > 0.9) CHECK(run.from.x - run.outer >= std::max(plate, barrel));
    }

    TEST_CASE("a bell stands beside the stove, its inlet at the flue outlet") {
        const Stove stove = sample_stove("workshop-bell");
        const FlueWay way = flue_way(stove);
        REQUIRE(way.bells.size() == 1);
        const BellCut& bell = way.bells.front();
        CHECK(bell.y1 + bell.bell->inlet == doctest::Approx(stove.outlet_height()));
        CHECK(bell.y2 - bell.y1 == doctest::Approx(bell.bell->height));
        CHECK(bell.x1 > way.outlet.x);
        CHECK(way.runs.front().start == bell.bell->height);
        CHECK(way.runs.front().from.y == doctest::Approx(bell.y1 + bell.bell->outlet));
    }

    TEST_CASE("a bypass joins the flue where it is led to") {
        const Stove stove = sample_stove("workshop-level-run");
        REQUIRE(stove.bypass);
        const FlueWay way = flue_way(stove);
        REQUIRE(way.bypass.size() == 2);
        const auto into = std::find_if(way.runs.begin(), way.runs.end(), [&](const FlueRun& run) {
            return run.section->name == stove.bypass->into;
        });
        const FlatPoint joins = into == way.runs.end() ? way.runs.front().from : into->from;
        double least = 1e9, most = -1e9;
        for (const FlatPoint& point : way.bypass[1].points) {
            least = std::min(least, point.x);
            most = std::max(most, point.x);
        }
        CHECK(most - least == doctest::Approx(stove.bypass->bore));
        CHECK((least + most) / 2 == doctest::Approx(joins.x));
    }

    TEST_CASE("a stove without a flue has no way to draw") {
        CHECK(flue_way(sheet_stove(bare_stove)).runs.empty());
    }
}

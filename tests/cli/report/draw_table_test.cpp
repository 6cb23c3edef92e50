#include "cli/report/draw_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <sstream>

#include "cli/report/cautions.h"
#include "tests/cli/report/sample_draw.h"

using namespace drawwell;

namespace {

std::string page_of(const DrawStudy& study) {
    return draw_page(study, {"test stove", false, {{"figure (SVG)", "test-draw.svg"}}});
}

/// Whether a page says it, however its lines are broken.
bool says(const std::string& page, std::string_view words) {
    std::string flat;
    for (const char c : page) {
        const char letter = c == '\n' ? ' ' : c;
        if (letter != ' ' || !flat.ends_with(' ')) flat += letter;
    }
    return flat.find(words) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/report/draw_table") {
    TEST_CASE("the answers come first, then directions, the curves and the files") {
        const std::string page = page_of(sample_draw());
        std::size_t at = 0;
        for (const char* words :
             {"test stove, 1 h after lighting", "It draws.", "11.0 g/s of air in",
              "a short push            6.4 Pa", "a push that lasts       4.2 Pa",
              "smoke beside the air    may trickle out",
              "what decides            a push that lasts", "Two directions are possible",
              "9.0 g/s of smoke out of the feed, stays", "1.5 g/s of air in, does not stay",
              "walls that follow       7.0 g/s", "feed takes in nothing   at a pull of",
              "wood gives off          1.2 g/s", "flow, g/s", "Before you light it",
              "test-draw.svg"}) {
            CAPTURE(words);
            const std::size_t found = page.find(words, at);
            REQUIRE(found != std::string::npos);
            at = found;
        }
        CHECK(says(page, standing_cautions().front()));
    }

    TEST_CASE("all that stands out on a curve is marked in the table") {
        const std::string page = page_of(sample_draw());
        for (const char* row :
             {"11.00          0.00", "now, stays\n", "feed takes in nothing\n", " 6.40 ",
              "tips over\n", "4.20  tips over (follow)\n", "0.00  stays (follow)\n",
              "does not stay\n", "0.00  does not stay (follow)\n", "smoke may trickle out\n",
              "smoke trickles out\n"}) {
            CAPTURE(row);
            CHECK(page.find(row, page.find("flow, g/s")) != std::string::npos);
        }
    }

    TEST_CASE("the verdict knows turned, both ends, nothing and little to spare") {
        DrawStudy study = sample_draw();
        study.flow = -9e-3;
        CHECK(says(page_of(study), "SMOKE COMES OUT OF THE FEED"));
        CHECK(says(page_of(study), "if it drew inward again"));
        study.flow = -0.5e-3;
        CHECK(says(page_of(study), "SMOKE LEAVES AT BOTH ENDS"));
        study = sample_draw();
        study.following.fold->pressure = 1.2;
        CHECK(says(page_of(study), "It draws, but with little to spare."));
        study.held.fold.reset();
        CHECK(says(page_of(study), "IT DRAWS, BUT WITH NOTHING TO SPARE."));
    }

    TEST_CASE("a moment before the fire has established itself is judged neither way") {
        DrawStudy study = sample_draw();
        study.time = 240;
        CHECK(says(page_of(study), "TOO EARLY TO JUDGE"));
        CHECK(says(page_of(study), "At this moment air goes in."));
        CHECK_FALSE(says(page_of(study), "It draws"));
        study.flow = -9e-3;
        CHECK(says(page_of(study), "At this moment smoke comes out of the feed."));
        CHECK_FALSE(says(page_of(study), "the draw is turned"));
        study.time = 0;
        study.flow = -1e-8;
        CHECK(says(page_of(study), "THE GAS STANDS STILL"));
        CHECK(says(page_of(study), "now none, in or out"));
        CHECK_FALSE(says(page_of(study), "SMOKE COMES OUT"));
    }

    TEST_CASE("how the draw may turn and come back is told for every pair of curves") {
        DrawStudy study = sample_draw();
        CHECK(says(page_of(study), "helps the draw, however long one waits."));
        study.following.states = {{10e-3, true}};
        CHECK(says(page_of(study), "they bring it back by themselves."));
        study.held.states = {{11e-3, true}};
        CHECK(says(page_of(study), "pushed over, it comes back by itself."));
        study.following.states = {{-7e-3, true}};
        CHECK(says(page_of(study), "if they follow, it stays turned."));
        study.held.states = {{-9e-3, true}};
        CHECK(says(page_of(study), "it is the wrong one"));
        study.held.states.clear();
        CHECK(says(page_of(study), "No steady direction was found"));
    }

    TEST_CASE("when smoke trickles out is told for each order of flows") {
        DrawStudy study = sample_draw();
        study.exchange_late = 7.5e-3;
        CHECK(says(page_of(study), "surely does from a push of"));
        study.exchange_early = 12e-3;
        CHECK(says(page_of(study), "may trickle out without any push, surely does from a push"));
        study.exchange_late = 11.5e-3;
        CHECK(says(page_of(study), "trickles out without any push"));
        study.exchange_early = study.exchange_late = 1e-3;
        CHECK(says(page_of(study), "does not matter: the draw tips over before"));
        study.exchange_early.reset();
        study.exchange_late.reset();
        CHECK(says(page_of(study), "none to reckon with"));
    }

    TEST_CASE("no line is wider than 80 characters and no number is none, whatever the study") {
        DrawStudy huge = sample_draw();
        for (DrawCurve* curve : {&huge.held, &huge.following}) {
            for (DrawPoint& point : curve->points) point.pressure *= 1e30;
            curve->fold->pressure *= 1e30;
        }
        huge.held.points[3].pressure = std::numeric_limits<double>::quiet_NaN();
        DrawStudy point;
        point.held.points = {{1e-3, 0}};
        for (const DrawStudy& study : {sample_draw(), huge, point, DrawStudy{}}) {
            const std::string page = page_of(study);
            CHECK(page.find("nan") == std::string::npos);
            CHECK(page.find("-0.0 ") == std::string::npos);
            std::istringstream lines(page);
            for (std::string line; std::getline(lines, line);) {
                CAPTURE(line);
                CHECK(line.size() <= 80);  // no letters of several bytes here
            }
        }
    }
}

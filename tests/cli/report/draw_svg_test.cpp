#include "cli/report/draw_svg.h"

#include <doctest/doctest.h>

#include <limits>

#include "tests/cli/report/sample_draw.h"
#include "tests/cli/report/svg_reading.h"

using namespace drawwell;

TEST_SUITE("cli/report/draw_svg") {
    TEST_CASE("the figure carries its title, both curves and everything that stands out") {
        const std::string svg = draw_svg(sample_draw(), "test stove");
        CHECK(well_formed(svg));
        for (const char* text :
             {">test stove: the draw 1 h after lighting</text>", ">walls as they are</text>",
              ">walls that follow</text>", ">now 11.0 g/s in</text>", ">9.0 g/s out</text>",
              ">7.0 g/s out</text>", ">10.4 g/s in</text>", ">a short push</text>",
              ">6.4 Pa</text>", ">a push that lasts</text>", ">4.2 Pa</text>",
              ">flow into the feed, g/s</text>", ">push against the draw, Pa</text>",
              "smoke begins to trickle out"}) {
            CAPTURE(text);
            CHECK(count_of(svg, text) == 1);
        }
        CHECK(count_of(svg, ">tips over</text>") == 3);  // one of them explains the mark
        CHECK(count_of(svg, "clip-path=") == 2);
        CHECK(count_of(svg, "stroke-dasharray=\"7 4\"") == 2);  // the curve and its key
        CHECK(count_of(svg, "fill=\"#ffffff\" stroke=") == 3);  // hollow: two and their key
        CHECK(count_of(svg, "fill=\"#f1e3b5\"") == 2);          // the band and its key
    }

    TEST_CASE("what a study does not have is neither drawn nor explained") {
        DrawStudy study = sample_draw();
        study.following = {};
        study.held.fold.reset();
        study.held.spill.reset();
        study.held.states = {{11e-3, true}};
        study.exchange_early.reset();
        study.exchange_late.reset();
        const std::string svg = draw_svg(study, "");
        CHECK(well_formed(svg));
        for (const char* text : {"walls that follow", "does not stay", "tips over", "a short push",
                                 "takes in nothing", "trickle"}) {
            CAPTURE(text);
            CHECK(svg.find(text) == std::string::npos);
        }
        CHECK(svg.find(">the draw 1 h after lighting<") != std::string::npos);
    }

    TEST_CASE("a study of nothing, of one point or of huge values still makes a figure") {
        DrawStudy point;
        point.held.points = {{1e-3, 2}};
        DrawStudy huge = sample_draw();
        for (DrawCurve* curve : {&huge.held, &huge.following}) {
            for (DrawPoint& p : curve->points) p.pressure *= 1e290;
            curve->fold->pressure *= 1e290;
            curve->spill->pressure *= 1e290;
        }
        DrawStudy holes = sample_draw();
        holes.held.points[30].pressure = std::numeric_limits<double>::quiet_NaN();
        holes.held.points[31].pressure = std::numeric_limits<double>::infinity();
        for (const DrawStudy& study : {DrawStudy{}, point, huge, holes}) {
            const std::string svg = draw_svg(study, "test");
            CHECK(well_formed(svg));
            CHECK(svg.find("nan") == std::string::npos);
            CHECK(svg.find("inf") == std::string::npos);
            CHECK(svg.size() < 40000);
        }
    }

    TEST_CASE("a title of a person's own cannot break the figure") {
        const std::string svg = draw_svg(sample_draw(), "</text> & \"a\" <b>\n");
        CHECK(well_formed(svg));
        CHECK(svg.find("&lt;/text&gt; &amp; &quot;a&quot; &lt;b&gt; : the draw") !=
              std::string::npos);
    }
}

#include "cli/report/draw_answers.h"

#include <doctest/doctest.h>

#include <limits>

#include "tests/cli/report/sample_draw.h"

using namespace drawwell;
using When = Trickle::When;

TEST_SUITE("cli/report/draw_answers") {
    TEST_CASE("the least of the pushes that end the draw decides") {
        DrawStudy study = sample_draw();
        DrawAnswers answers = draw_answers(study);
        CHECK(answers.short_push == study.held.fold->pressure);
        CHECK(answers.lasting_push == study.following.fold->pressure);
        CHECK(answers.limit == DrawLimit::lasting_push);
        CHECK(answers.limit_push == study.following.fold->pressure);

        study.following.fold->pressure = 7;
        study.exchange_early.reset();
        CHECK(draw_answers(study).limit == DrawLimit::short_push);

        study.exchange_early = 10e-3;
        answers = draw_answers(study);
        CHECK(answers.limit == DrawLimit::trickle);
        CHECK(answers.limit_push == push_at(study.held, 10e-3));
    }

    TEST_CASE("smoke trickles at a push only between the present flow and the top of the curve") {
        DrawStudy study = sample_draw();
        CHECK(draw_answers(study).trickle_early.when == When::at_push);
        CHECK(draw_answers(study).trickle_late.when == When::after_turning);
        study.exchange_early = study.flow;
        CHECK(draw_answers(study).trickle_early.when == When::already);
        CHECK(draw_answers(study).limit == DrawLimit::trickle);
        CHECK(draw_answers(study).limit_push == 0);
        study.exchange_early.reset();
        CHECK(draw_answers(study).trickle_early.when == When::never);
    }

    TEST_CASE("without an inward branch nothing is spare, and no walls that follow spare nothing") {
        DrawStudy study = sample_draw();
        study.held.fold.reset();
        CHECK(draw_answers(study).limit == DrawLimit::none);
        CHECK_FALSE(draw_answers(study).short_push);
        study.held.fold = DrawPoint{0, -0.5};
        CHECK_FALSE(draw_answers(study).short_push);

        study = sample_draw();
        study.following.fold.reset();
        CHECK(draw_answers(study).limit == DrawLimit::lasting_push);
        CHECK(draw_answers(study).limit_push == 0);
        study.following = {};  // not traced at all
        study.exchange_early.reset();
        CHECK(draw_answers(study).limit == DrawLimit::short_push);
    }

    TEST_CASE("a draw that is turned is measured where it would stand inward") {
        DrawStudy study = sample_draw();
        study.flow = -9e-3;
        CHECK(draw_answers(study).trickle_early.when == When::at_push);
        study.held.states = {{-9e-3, true}};
        CHECK(draw_answers(study).trickle_early.when == When::never);
    }

    TEST_CASE("what stands outward is pulled back at the lowest point before the next state") {
        DrawCurve curve = sample_draw().held;
        Directions directions = directions_of(curve);
        CHECK(directions.inward);
        CHECK(directions.outward);
        double lowest = 0;
        for (const DrawPoint& point : curve.points)
            if (point.flow < 0) lowest = std::min(lowest, point.pressure);
        CHECK(directions.pull_back == -lowest);

        curve.states = {{11e-3, true}};
        directions = directions_of(curve);
        CHECK(directions.inward);
        CHECK_FALSE(directions.outward);
        CHECK_FALSE(directions.pull_back);
        curve.states = {{1e-3, false}};
        CHECK_FALSE(directions_of(curve).inward);
    }

    TEST_CASE("between points the curve is straight, beyond them and at holes there is none") {
        DrawCurve curve;
        curve.points = {{0, 4}, {1, 2}, {2, std::numeric_limits<double>::quiet_NaN()}};
        CHECK(push_at(curve, 0) == 4.0);
        CHECK(push_at(curve, 0.25) == doctest::Approx(3.5));
        CHECK_FALSE(push_at(curve, -0.1));
        CHECK_FALSE(push_at(curve, 1.5));
        CHECK_FALSE(push_at(curve, 2.1));
        CHECK_FALSE(push_at({}, 0));
    }
}

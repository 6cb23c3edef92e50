#include "models/draw_study.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "solver/errors.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Stove burning() {
    Stove stove = plain_stove();
    stove.burn_rate = Table(3e-4);
    stove.burn.duration = 1800;
    stove.burn.reserve_every = stove.burn.sustained_every = 0;
    return stove;
}

/// Whether a curve has a state within a share of that flow, and it is stable.
bool stands_at(const DrawCurve& curve, double flow, double share) {
    return std::any_of(curve.states.begin(), curve.states.end(), [&](const DrawState& state) {
        return state.stable && std::abs(state.flow - flow) <= share * std::abs(flow);
    });
}

}  // namespace

TEST_SUITE("models/draw_study") {
    TEST_CASE("a moment beyond the burn, or before it, is refused") {
        CHECK_THROWS_AS(study_draw(burning(), plain_library(), 1801), InputError);
        CHECK_THROWS_AS(study_draw(burning(), plain_library(), -1), InputError);
    }

    TEST_CASE("the flow that the burn has is one at which the stove stands with its walls held") {
        for (const double time : {0.0, 600.0, 1800.0}) {
            CAPTURE(time);
            const DrawStudy study = study_draw(burning(), plain_library(), time);
            CHECK(study.time == time);
            REQUIRE(study.flow > 1e-3);
            CHECK(stands_at(study.held, study.flow, 0.01));
        }
    }

    TEST_CASE("a curve is traced from smoke out to air in, flow increasing") {
        const DrawStudy study = study_draw(burning(), plain_library(), 600);
        for (const DrawCurve* curve : {&study.held, &study.following}) {
            REQUIRE(curve->points.size() > 20);
            for (std::size_t i = 1; i < curve->points.size(); ++i)
                CHECK(curve->points[i].flow > curve->points[i - 1].flow);
            CHECK(curve->points.front().flow < -study.flow);
            CHECK(curve->points.back().flow > study.flow);
            for (std::size_t i = 1; i < curve->states.size(); ++i)
                CHECK(curve->states[i].flow > curve->states[i - 1].flow);
            REQUIRE(curve->spill);
            CHECK(curve->spill->flow == 0);
            REQUIRE(curve->fold);
            // A parabola through the top point and its neighbours lies no lower.
            for (const DrawPoint& point : curve->points)
                if (point.flow >= curve->fold->flow)
                    CHECK(point.pressure <= curve->fold->pressure + 1e-9);
        }
    }

    TEST_CASE("states that follow one another on a curve are by turns stable and not") {
        const DrawStudy study = study_draw(burning(), plain_library(), 600);
        for (const DrawCurve* curve : {&study.held, &study.following})
            for (std::size_t i = 1; i < curve->states.size(); ++i)
                CHECK(curve->states[i].stable != curve->states[i - 1].stable);
    }

    TEST_CASE("smoke may pass the air only where there is an open feed") {
        Stove stove = burning();
        const DrawStudy open = study_draw(stove, plain_library(), 60);
        CHECK(open.exchange_early.value() > open.exchange_late.value());
        stove.feed.reset();
        CHECK_FALSE(study_draw(stove, plain_library(), 60).exchange_early);
    }
}

#include "models/judge_draw.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/models/hand_made_burn.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// Lowest at a time [s], where it is `least`; a pascal more for each ten minutes from there.
HandMade::Of lowest(double least, double at) {
    return [=](double t) { return least + std::abs(t - at) / 600; };
}

/// The draw as judged, without the other answers.
Summary judged(const HandMade& run) {
    Summary summary;
    judge_draw(run.stove, run.recorder(), summary);
    return summary;
}

/// An hour that burns for its first half; each limit is weakest at a time of its own.
struct HalfAnHour : HandMade {
    HalfAnHour() : HandMade(60) {
        set("heat_release", until(1800));
        set("reserve_draw", lowest(5, 900));
        set("reserve_draw_suction", lowest(4.5, 1200));
        set("sustained_push", lowest(4, 600));
        set("exchange_draw_early", lowest(3, 1500));
        set("exchange_draw_late", lowest(3.5, 1500));
        set("gust_push", steady(0));
        set("draw_limit", [](double t) { return t == 1500 ? 2.0 : t == 600 ? 1.0 : 0.0; });
    }
};

}  // namespace

TEST_SUITE("models/judge_draw") {
    TEST_CASE("each limit of the draw is told at its own least") {
        const Summary summary = judged(HalfAnHour());
        CHECK(summary.reserve_draw_min.value() == near(5, 1e-12));
        CHECK(summary.reserve_draw_min_time.value() == 900);
        CHECK(summary.reserve_suction_min.value() == near(4.5, 1e-12));
        CHECK(summary.sustained_push_min.value() == near(4, 1e-12));
        CHECK(summary.exchange_draw_min_early.value() == near(3, 1e-12));
        CHECK(summary.exchange_draw_min_late.value() == near(3.5, 1e-12));
    }

    TEST_CASE("weakness before five minutes or after the fire is out is not judged") {
        HalfAnHour run;
        for (const char* limit : {"reserve_draw", "reserve_draw_suction", "sustained_push",
                                  "exchange_draw_early", "exchange_draw_late"})
            run.set(limit, [](double t) { return t < 300 || t > 1740 ? -1.0 : 2.0; });
        run.set("gust_push", [](double t) { return t < 300 || t > 1740 ? 50.0 : 0.0; });
        const Summary summary = judged(run);
        for (const auto& least :
             {summary.reserve_draw_min, summary.reserve_suction_min, summary.sustained_push_min,
              summary.exchange_draw_min_early, summary.exchange_draw_min_late})
            CHECK(least.value() == 2);
        CHECK_FALSE(summary.gust_push_max);
    }

    TEST_CASE("gusts are set against the reserve at the same moment, and only where they blow") {
        HalfAnHour run;
        CHECK_FALSE(judged(run).gust_margin_min);
        // The reserve is 5 Pa at 900 s and 5.5 Pa five minutes later.
        run.set("gust_push", [](double t) { return t == 900 ? 1.0 : t == 1200 ? 6.0 : 0.0; });
        const Summary summary = judged(run);
        CHECK(summary.gust_margin_min.value() == near(-0.5, 1e-12));
        CHECK(summary.gust_push_max.value() == 6);
    }

    TEST_CASE("what gives way first is what did at the weakest moment of all") {
        HalfAnHour run;
        CHECK(judged(run).draw_limit.value() == Limit::exchange);
        run.set("exchange_draw_late", steady(9));
        CHECK(judged(run).draw_limit.value() == Limit::lasting_push);
        run.set("sustained_push", steady(9));
        CHECK(judged(run).draw_limit.value() == Limit::short_push);
    }

    TEST_CASE("limits that were not worked out are not judged") {
        HalfAnHour run;
        run.stove.burn.sustained_every = 0;
        run.set("sustained_push", steady(0));
        Summary summary = judged(run);
        CHECK_FALSE(summary.sustained_push_min);
        CHECK(summary.draw_limit.value() == Limit::exchange);
        run.stove.burn.reserve_every = 0;
        summary = judged(run);
        CHECK_FALSE(summary.reserve_draw_min);
        CHECK_FALSE(summary.exchange_draw_min_late);
        CHECK_FALSE(summary.draw_limit);
    }
}

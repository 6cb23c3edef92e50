#include "models/summarise.h"

#include <doctest/doctest.h>

#include "tests/models/hand_made_burn.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

TEST_SUITE("models/summarise") {
    TEST_CASE("smoke that comes out of the feed is counted along straight lines") {
        HandMade run(20);
        // -1 at 60 s between two rows of 1 and 3: half a minute before, a quarter after.
        run.set("feed_air_flow", [](double t) { return t == 0 ? 1.0 : t == 60 ? -1.0 : 3.0; });
        CHECK(run.summary().smoke_back == near(30 + 15, 1e-12));
        CHECK(run.summary().smoke_back_first.value() == near(30, 1e-12));
        run.set("feed_air_flow", [](double t) { return t <= 60 ? -1.0 : 1.0; });
        CHECK(run.summary().smoke_back == near(60 + 30, 1e-12));
        CHECK(run.summary().smoke_back_first.value() == 0);
        run.set("feed_air_flow", steady(1));
        CHECK(run.summary().smoke_back == 0);
        CHECK_FALSE(run.summary().smoke_back_first);
    }

    TEST_CASE("a stove draws if its feed takes in air from five minutes on while it burns") {
        HandMade run(60);
        run.set("heat_release", until(1800));
        CHECK(run.summary().draws == true);
        run.set("feed_air_flow", [](double t) { return t < 300 ? -1.0 : 1.0; });
        CHECK(run.summary().draws == true);  // before that it may smoke
        run.set("feed_air_flow", [](double t) { return t >= 1800 ? -1.0 : 1.0; });
        CHECK(run.summary().draws == true);  // and after
        run.set("feed_air_flow", [](double t) { return t == 600 ? 0.0 : 1.0; });
        CHECK(run.summary().draws == false);
        // It burns until the release last falls below a fiftieth of its peak.
        run.set("feed_air_flow", [](double t) { return t == 2400 ? -1.0 : 1.0; });
        run.set("heat_release", [](double t) { return t < 1800 ? 1.0 : t < 2700 ? 0.03 : 0.01; });
        CHECK(run.summary().draws == false);
        run.set("heat_release", [](double t) { return t < 1800 ? 1.0 : 0.01; });
        CHECK(run.summary().draws == true);
    }

    TEST_CASE("a burn or a fire too short to judge is said neither to draw nor not to") {
        const auto open = [](const Summary& summary) {
            return !summary.draws && !summary.reserve_draw_min && !summary.reserve_suction_min &&
                   !summary.exchange_draw_min_late && !summary.draw_limit &&
                   !summary.feed_suction_min;
        };
        // Rows a minute apart: five minutes are over in the sixth row, where a period would begin.
        CHECK(open(HandMade(4).set("heat_release", steady(1)).summary()));
        CHECK(open(HandMade(6).set("heat_release", steady(1)).summary()));
        CHECK(HandMade(7).set("heat_release", steady(1)).summary().draws == true);
        CHECK(open(HandMade(60).set("heat_release", until(300)).summary()));
        HandMade smoking(4);
        smoking.set("heat_release", steady(1)).set("feed_air_flow", steady(-1));
        CHECK(open(smoking.summary()));
        CHECK(smoking.summary().smoke_back == 180);
        CHECK(open(HandMade(60).set("heat_release", steady(0)).summary()));  // nothing burnt
    }

    TEST_CASE("a fire that is lit late is judged from five minutes after that") {
        HandMade run(60);
        run.set("heat_release", [](double t) { return t < 1200 ? 0.0 : 1.0; });
        run.set("feed_air_flow", [](double t) { return t < 1440 ? -1.0 : 1.0; });
        CHECK(run.summary().draws == true);
        run.set("feed_air_flow", [](double t) { return t < 1500 ? -1.0 : 1.0; });
        CHECK(run.summary().draws == false);
    }

    TEST_CASE("the flue is wet while gas goes up past a wall below its dew point") {
        HandMade run(60);
        run.set("heat_release", steady(1));
        run.set("flue_gas_flow", steady(1));
        run.set("flue_dew_point", steady(290));
        run.set(
            "flue_wall_temperature", [](double t) { return t < 600 ? 280.0 : 350.0; }, 2);
        CHECK(run.summary().flue_wet.value() == 540);
        CHECK(run.summary().flue_wet_last.value() == 540);
        run.set("flue_gas_flow", steady(-1));
        CHECK(run.summary().flue_wet.value() == 0);
        CHECK_FALSE(run.summary().flue_wet_last);
        run.set("flue_gas_flow", steady(1));
        run.set("flue_wall_temperature", steady(330), 2);
        CHECK(run.summary().flue_wet.value() == 0);
    }

    TEST_CASE("spare draw and suction are taken at their least over the same time") {
        HandMade run(60);
        run.set("heat_release", until(1800));
        run.set("reserve_draw", [](double t) {
            return t < 300 ? -9 : t == 900 ? 2 : t > 1800 ? 1 : 5;
        });
        run.set("feed_suction", [](double t) { return t < 300 ? -9 : t == 600 ? 0.5 : 3; });
        const Summary summary = run.summary();
        CHECK(summary.reserve_draw_min.value() == 2);
        CHECK(summary.reserve_draw_min_time.value() == 900);
        CHECK(summary.feed_suction_min.value() == 0.5);
    }

    TEST_CASE("spare draw that was not worked out is not reported as nought") {
        Stove stove = plain_stove();
        stove.burn.reserve_every = 0;
        HandMade run(60, stove);
        run.set("reserve_draw", steady(0));
        CHECK_FALSE(run.summary().reserve_draw_min);
        CHECK_FALSE(run.summary().reserve_draw_min_time);
        CHECK(run.summary().draws == true);
    }

    TEST_CASE("the mean air ratio is all oxygen over all need, not the mean of ratios") {
        HandMade run(60);
        run.set("heat_release", until(1800));
        // Half of the time 3 over 1, half 3 over 3; afterwards it no longer counts.
        run.set_oxygen(steady(3), [](double t) { return t <= 840 ? 1 : t < 1800 ? 3 : 1e-9; });
        const double first = 840, between = 60, second = 840;
        const double ratio = 3 * (first + between + second) / (first + 2 * between + 3 * second);
        CHECK(run.summary().air_ratio_mean.value() == near(ratio, 1e-12));
        run.set_oxygen(steady(3), steady(0));
        CHECK_FALSE(run.summary().air_ratio_mean);
    }

    TEST_CASE("means are over the time of strong burning, air by every opening") {
        HandMade run(60);
        run.set("heat_release", [](double t) { return t < 1800 ? 1.0 : 0.09; });
        run.set("feed_air_flow", [](double t) { return t < 1800 ? 0.010 : 0.5; });
        run.set("side_air_flow", [](double t) { return t < 1800 ? 0.002 : 0.5; });
        run.set("outlet_gas_temperature", [](double t) { return t < 1800 ? 500 : 900; });
        CHECK(run.summary().air_flow_mean == near(0.012, 1e-12));
        CHECK(run.summary().exit_gas_mean.value() == near(500, 1e-12));
        CHECK(run.summary().exit_gas_max == 900);
    }

    TEST_CASE("the plate is judged ring by ring: the best is the one that fries longest") {
        HandMade run(31);
        const auto celsius = [](double c) { return c + constants::ice_point; };
        const std::size_t rings = run.built().layout.plate.solids.size();
        for (std::size_t r = 0; r < rings; ++r)
            run.set("plate_temperature", steady(celsius(r == 0 ? 300 : r == 3 ? 200 : 150)), r);
        const Summary summary = run.summary();
        CHECK(summary.plate_best_ring->fry == 1800);
        CHECK(summary.plate_best_ring_radius.value() == run.built().layout.plate.position[3]);
        CHECK(summary.plate_centre_max.value() == celsius(300));
        CHECK(summary.plate_rim_max.value() == celsius(150));
        CHECK(summary.plate_time_to_fry.value() == 0);
        // The pot covers more of the cooler rings than of the centre.
        CHECK(summary.plate_pot->fry + summary.plate_pot->simmer == 1800);
    }

    TEST_CASE("where no ring fries, the hottest counts") {
        HandMade run(31);
        const std::size_t rings = run.built().layout.plate.solids.size();
        for (std::size_t r = 0; r < rings; ++r)
            run.set("plate_temperature", steady((r == 2 ? 130 : 70) + constants::ice_point), r);
        const Summary summary = run.summary();
        CHECK(summary.plate_best_ring->simmer == 1800);
        CHECK(summary.plate_best_ring_radius.value() == run.built().layout.plate.position[2]);
        CHECK_FALSE(summary.plate_time_to_fry);
    }

    TEST_CASE("what the stove lacks is left out") {
        Stove stove = plain_stove();
        stove.barrel.reset();
        stove.plate.reset();
        stove.flue.outlet = 0;
        const Summary summary = HandMade(20, stove).summary();
        CHECK_FALSE(summary.plate_centre_max);
        CHECK_FALSE(summary.plate_best_ring);
        CHECK_FALSE(summary.barrel_top_max);
        CHECK(summary.riser_gas_max == 300);
    }

    TEST_CASE("the room is warmest once, and only where its volume is known") {
        Stove stove = plain_stove();
        stove.site.room_loss = 100;
        const auto room = [](double t) { return 300 - std::abs(t - 900) / 100; };
        CHECK_FALSE(HandMade(31, stove).set("room_temperature", room).summary().room_warmest);
        stove.site.room_volume = 50;
        const Summary summary = HandMade(31, stove).set("room_temperature", room).summary();
        CHECK(summary.room_warmest.value() == 300);
        CHECK(summary.room_warmest_time.value() == 900);
    }

    TEST_CASE("the room's own need runs all the while") {
        Stove stove = plain_stove();
        stove.site.room_loss = 100;
        const Summary summary = HandMade(31, stove).summary();
        CHECK(summary.room_demand ==
              near(100 * (stove.site.room - stove.site.outdoor(0)) * 1800, 1e-12));
    }
}

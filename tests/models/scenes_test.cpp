#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "tests/models/sample_burn.h"

using namespace drawwell;
using namespace drawwell::testing;

// Hours in which a builder looks on, burned by the sample stove. Bands hold the run's figures
// within what uncertain inputs move them by, so that only a change of what happens breaks them.

namespace {

constexpr double minute = 60;  // [s]

/// Largest value of a column's first cell between two times [s].
double most_between(const Results& results, const char* column, double from, double to) {
    const Column& found = *results.find(column);
    double most = -1e300;
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (results.time[i] >= from && results.time[i] <= to)
            most = std::max(most, found.values[i * found.width]);
    return most;
}

BurnOutcome with_fan(const std::string& suction) {
    return burn_sample({"burn.duration=130 min", "burn.reserve_every=120 s",
                        "burn.sustained_every=0 s", "site.room_suction=" + suction});
}

}  // namespace

TEST_SUITE("models/scenes") {
    TEST_CASE("six hours with a reload each 24 minutes find a rhythm and never smoke") {
        const BurnOutcome burn = burn_sample(
            {"burn.duration=6 h",
             "load.main.at=16 min, 40 min, 64 min, 88 min, 112 min, 136 min, 160 min, 184 min, "
             "208 min, 232 min, 256 min, 280 min, 304 min, 328 min"});
        CHECK(burn.summary.draws == true);
        CHECK(burn.summary.smoke_back == 0);
        CHECK(burn.summary.energy_residual < 1e-3);
        CHECK(burn.summary.element_residual < 1e-3);
        CHECK(burn.summary.remarks.empty());  // every load fitted when it was due
        // The fifth hour repeats the fourth: walls of this stove answer within the hour.
        for (const char* column : {"plate_temperature", "outlet_gas_temperature"}) {
            const double fourth = most_between(burn.results, column, 190 * minute, 262 * minute);
            const double fifth = most_between(burn.results, column, 262 * minute, 334 * minute);
            CHECK(std::abs(fifth - fourth) < 8);  // [K]
        }
        CHECK(value_at(burn.results, "char_left", 360 * minute) > 0.01);
    }

    TEST_CASE("a reload chills the first gas over the fire for half a minute") {
        const BurnOutcome burn = burn_sample({"burn.duration=66 min", "burn.output_every=5 s"});
        const Column& gas = *burn.results.find("tunnel_gas_temperature");
        double coldest = 1e9;
        for (std::size_t i = 0; i < burn.results.time.size(); ++i)
            if (burn.results.time[i] > 64 * minute && burn.results.time[i] < 65 * minute)
                coldest = std::min(coldest, gas.values[i * gas.width]);
        const double before = value_at(burn.results, "tunnel_gas_temperature", 64 * minute - 5);
        CHECK(coldest < before - 10);  // [K] some tens
        CHECK(coldest > before - 200);
    }

    TEST_CASE("a fan weaker than the spare draw takes its pascals from it, and no smoke comes") {
        const BurnOutcome still = with_fan("0 Pa");
        const BurnOutcome fan = with_fan("[[\"60 min\", \"0 Pa\"], [\"61 min\", \"5 Pa\"]]");
        CHECK(fan.summary.draws == true);
        CHECK(fan.summary.smoke_back == 0);
        const auto mean = [](const BurnOutcome& burn, const char* column) {
            return mean_between(burn.results, column, 64 * minute, 100 * minute);
        };
        // The fire's heat then goes to less air, whose hotter column gives some of it back.
        const double lost = mean(still, "reserve_draw") - mean(fan, "reserve_draw");
        CHECK(lost > 3);
        CHECK(lost < 6);
        CHECK(mean(fan, "feed_air_flow") < 0.85 * mean(still, "feed_air_flow"));
        CHECK(mean(fan, "riser_gas_temperature") > mean(still, "riser_gas_temperature") + 20);
    }

    TEST_CASE(
        "a fan stronger than the spare draw turns it, and it stays turned while the fan runs") {
        const BurnOutcome fan = with_fan("[[\"60 min\", \"0 Pa\"], [\"61 min\", \"12 Pa\"]]");
        CHECK(fan.summary.draws == false);
        REQUIRE(fan.summary.smoke_back_first);
        CHECK(*fan.summary.smoke_back_first > 60 * minute);
        CHECK(*fan.summary.smoke_back_first < 61.5 * minute);
        CHECK(fan.summary.smoke_back > 60 * minute);
        CHECK(value_at(fan.results, "feed_air_flow", 120 * minute) < 0);
        CHECK(fan.summary.energy_residual < 1e-3);
    }

    TEST_CASE("walls still hot bring the draw back as soon as the fan stops") {
        const BurnOutcome fan = with_fan(
            "[[\"60 min\", \"0 Pa\"], [\"61 min\", \"12 Pa\"], [\"75 min\", \"12 Pa\"], "
            "[\"76 min\", \"0 Pa\"]]");
        CHECK(fan.summary.smoke_back > 14 * minute);
        CHECK(fan.summary.smoke_back < 17 * minute);
        CHECK(value_at(fan.results, "feed_air_flow", 78 * minute) > 0);
    }

    TEST_CASE("a gust of twenty seconds is borne below the spare draw and smokes above it") {
        const auto gust = [](const std::string& speed) {
            return burn_sample(
                {"burn.duration=70 min", "burn.output_every=5 s", "site.wind_factor=0.6",
                 "site.wind=[[\"60 min\", \"0 m/s\"], [\"3603 s\", \"" + speed +
                     "\"], [\"3620 s\", \"" + speed + "\"], [\"3623 s\", \"0 m/s\"]]"});
        };
        // 0.6 of the dynamic pressure: 4.5 m/s push with 7.5 Pa, 6 m/s with 13 Pa, for some 9 Pa.
        const BurnOutcome weak = gust("4.5 m/s"), strong = gust("6 m/s");
        CHECK(weak.summary.smoke_back == 0);
        CHECK(value_at(weak.results, "feed_air_flow", 3615) <
              0.8 * value_at(weak.results, "feed_air_flow", 3600));
        CHECK(strong.summary.smoke_back > 10);
        CHECK(strong.summary.smoke_back < 30);  // it is over with the gust
        CHECK(value_at(strong.results, "feed_air_flow", 3660) > 0);
    }

    TEST_CASE("gusts that are only told are held against the spare draw") {
        const BurnOutcome burn =
            burn_sample({"burn.duration=40 min", "burn.reserve_every=60 s",
                         "burn.sustained_every=0 s", "site.wind=0 m/s", "site.gust=6 m/s"});
        REQUIRE(burn.summary.gust_push_max);
        // By hand: 0.3 of half of 1.25 kg/m3 at 6 degC and 120 m times 36 m2/s2.
        CHECK(*burn.summary.gust_push_max == doctest::Approx(0.3 * 0.5 * 1.25 * 36).epsilon(0.01));
        CHECK(*burn.summary.gust_margin_min ==
              doctest::Approx(*burn.summary.reserve_draw_min - *burn.summary.gust_push_max)
                  .epsilon(0.05));
    }

    TEST_CASE("a damper half shut on embers keeps warmth in and still draws") {
        const auto burn = [](const std::string& damper) {
            return burn_sample({"burn.duration=210 min", "burn.reserve_every=120 s",
                                "burn.sustained_every=0 s", "schedule.damper=" + damper});
        };
        const BurnOutcome open = burn("open");
        const BurnOutcome half = burn("[[\"0 min\", \"open\"], [\"150 min\", \"half\"]]");
        CHECK(half.summary.draws == true);
        CHECK(half.summary.smoke_back == 0);
        const auto later = [](const BurnOutcome& b, const char* column) {
            return mean_between(b.results, column, 170 * minute, 200 * minute);
        };
        // Half a flue's section is a sharp opening that costs a tenth of the air and more.
        CHECK(later(half, "feed_air_flow") < 0.97 * later(open, "feed_air_flow"));
        CHECK(later(half, "feed_air_flow") > 0.6 * later(open, "feed_air_flow"));
        CHECK(later(half, "plate_temperature") > later(open, "plate_temperature") + 2);
        CHECK(later(half, "heat_up_flue") < later(open, "heat_up_flue"));
        // Before it moved, nothing differs.
        CHECK(value_at(half.results, "feed_air_flow", 148 * minute) ==
              doctest::Approx(value_at(open.results, "feed_air_flow", 148 * minute)).epsilon(1e-6));
    }

    TEST_CASE(
        "a flue colder than the room's air outside lets gas fall, and a little kindling turns "
        "it only while the fall is slight") {
        const auto burn = [](const std::string& outdoor, const std::string& place) {
            return burn_sample({"burn.duration=20 min", "site.room=12 °C",
                                "site.outdoor=" + outdoor, "flue.stack.place=" + place,
                                "flue.level.place=" + place});
        };
        const BurnOutcome slight = burn("14 °C", "outdoors");
        REQUIRE(slight.summary.cold_start);
        const ColdStart& gentle = *slight.summary.cold_start;
        CHECK(gentle.column < 0);
        CHECK(gentle.column > -0.05);
        REQUIRE(gentle.kindling);
        CHECK(*gentle.kindling > 20);
        CHECK(*gentle.kindling < 300);
        CHECK(slight.summary.smoke_back == doctest::Approx(*gentle.kindling).epsilon(0.2));

        const BurnOutcome heavy = burn("35 °C", "indoors");
        REQUIRE(heavy.summary.cold_start);
        const ColdStart& cold = *heavy.summary.cold_start;
        CHECK(cold.leaning == Leaning::falls);
        CHECK(cold.column < -1.5);  // 2.5 m of it: g * 2.5 * (1.22 - 1.13)
        CHECK(cold.column > -3);
        CHECK(cold.priming == doctest::Approx(-cold.column));
        CHECK_FALSE(cold.kindling);
        CHECK(heavy.summary.smoke_back > 10 * minute);
    }

    TEST_CASE("a bypass open for the first ten minutes cools neither the draw nor the books") {
        const BurnOutcome burn =
            burn_sample({"burn.duration=20 min", "bypass.bore=80 mm",
                         "schedule.bypass=[[\"0 min\", \"open\"], [\"10 min\", \"shut\"]]"});
        CHECK(burn.summary.draws == true);
        CHECK(burn.summary.energy_residual < 1e-3);
        CHECK(value_at(burn.results, "outlet_gas_temperature", 9 * minute) >
              value_at(burn.results, "outlet_gas_temperature", 12 * minute) - 60);
    }
}

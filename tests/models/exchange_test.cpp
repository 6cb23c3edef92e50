#include "models/exchange.h"

#include <doctest/doctest.h>

#include <cmath>

#include "models/stove_run.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// A stove with a steady fire of plain heat in its hearth.
Stove heated() {
    Stove stove = plain_stove();
    stove.heat_source = Table(6000);
    return stove;
}

/// The onset with 8 g/s into the feed at an instant, walls cold.
ExchangeOnset onset_of(const Stove& stove, double time = 0) {
    StoveRun run(stove, plain_library());
    std::vector<double> state = run.built.network.initial_state(), rate(state.size());
    run.balance.rates_at_flow(time, state, 0.008, rate);
    return exchange_onset(run.stove, run.built, run.balance.flow().march());
}

}  // namespace

TEST_SUITE("models/exchange") {
    TEST_CASE("the flow at a Froude number of one is what is worked out by hand") {
        // A round opening of 100 mm, air of 1.2 kg/m3 over gas of 0.3: the speed is
        // sqrt(9.80665 x 0.1 x 0.75) = 0.85761 m/s, the flow 1.2 x 0.00785398 x 0.85761 kg/s.
        CHECK(flow_at_unit_froude(1.2, 0.3, constants::pi / 4 * 0.01) == near(8.0827e-3, 1e-4));
    }

    TEST_CASE("the flow at a Froude number of one goes with the area to the power of 5/4") {
        const double one = flow_at_unit_froude(1.2, 0.4, 0.003);
        for (const double times : {0.1, 2.0, 16.0})
            CHECK(flow_at_unit_froude(1.2, 0.4, 0.003 * times) ==
                  near(one * std::pow(times, 1.25), 1e-12));
    }

    TEST_CASE("nothing changes places with gas that is no lighter") {
        CHECK(flow_at_unit_froude(1.2, 1.2, 0.01) == 0);
        CHECK(flow_at_unit_froude(1.2, 1.3, 0.01) == 0);
        CHECK(onset_of(plain_stove()).early == doctest::Approx(0));  // no fire, walls as the room
    }

    TEST_CASE("smoke may pass the air in an open feed at twice the flow at which it surely does") {
        const ExchangeOnset onset = onset_of(heated());
        CHECK(onset.late > 0);
        CHECK(onset.early == near(2 * onset.late, 1e-12));  // Fr 0.5 and 0.25
        // 6 kW heat 8 g/s by some 700 K: air some 3.4 times as dense, through 125 x 110 mm.
        const double by_hand = 0.25 * flow_at_unit_froude(1.205, 1.205 / 3.4, 0.125 * 0.11);
        CHECK(onset.late ==
              near(by_hand, 0.05));  // heat capacity grows by a tenth, walls take some
    }

    TEST_CASE("wood that fills the feed lowers the flow at which smoke passes the air") {
        const double empty = onset_of(heated()).late;
        for (const double share : {0.5, 0.1}) {
            Stove stove = heated();
            stove.feed->free_share = share;
            CHECK(onset_of(stove).late == near(empty * std::pow(share, 1.25), 1e-9));
        }
    }

    TEST_CASE("a feed cover lowers the flow at which smoke passes the air while it is on") {
        const double open = onset_of(heated()).late;
        Stove stove = heated();
        stove.schedule.feed_cover = Steps({0, 60}, {0.5, 0});
        CHECK(onset_of(stove).late == near(open * std::pow(0.5, 1.25), 1e-9));
        CHECK(onset_of(stove, 60).late == near(open, 1e-9));
    }

    TEST_CASE("without a feed no smoke passes the air") {
        Stove stove = heated();
        stove.feed.reset();
        const ExchangeOnset none = onset_of(stove);
        CHECK(none.early == 0);
        CHECK(none.late == 0);
    }
}
